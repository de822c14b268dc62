package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.texts.ViewText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;

/** All alarms that are not quiet, most urgent first, in one row. */
final class AlarmStrip extends Group {
    private static final int MOST = 3;

    /** Largest letters, room for the symbol, distance of the state from the words and of two alarms; units. */
    private static final double SIZE = 25;

    private static final double SIGN = 44;
    private static final double STATE_GAP = 20;
    private static final double GAP = 28;

    /** Font size at which widths are measured, since they grow with it. */
    private static final double MEASURED = 100;

    private final List<Cell> cells = new ArrayList<>();
    private final Words more = new Words(Typeface.BOLD);

    AlarmStrip() {
        setAccessibleRole(AccessibleRole.TEXT);
        getChildren().add(more);
        for (int i = 0; i < MOST; i++) {
            Cell cell = new Cell();
            cells.add(cell);
            getChildren().addAll(cell.sign, cell.words, cell.state);
        }
    }

    void lay(List<AlarmRow> alarms, Box box, double u) {
        List<AlarmRow> shown = alarms.subList(0, Math.min(MOST, alarms.size()));
        int left = alarms.size() - shown.size();
        String rest = left == 0 ? "" : ViewText.AND_MORE.say(left);
        double restWide = left == 0 ? 0 : 130 * u;
        more.place(
                rest,
                new Box(box.right() - restWide, box.y(), Math.max(u, restWide), box.height()),
                24 * u,
                1,
                Words.Side.RIGHT);
        double room = box.width() - (left == 0 ? 0 : restWide + GAP * u);
        layCells(shown, new Box(box.x(), box.y(), room, box.height()), u);
        setAccessibleText(spoken(alarms));
    }

    /** One size of letters for all: each alarm gets as much of the row as its words need. */
    private void layCells(List<AlarmRow> shown, Box box, double u) {
        for (int i = 0; i < MOST; i++) cells.get(i).visible(i < shown.size());
        if (shown.isEmpty()) return;
        double free = box.width() - shown.size() * (SIGN + STATE_GAP) * u - (shown.size() - 1) * GAP * u;
        double one = size(shown, 1, free, box.height(), u);
        double two = size(shown, 2, free, box.height(), u);
        int lines = two > one * Words.WORTH_A_LINE ? 2 : 1;
        double size = lines == 1 ? one : two;
        double spare = (free
                        - shown.stream()
                                .mapToDouble(row -> needs(row, size, lines))
                                .sum())
                / shown.size();
        double x = box.x();
        for (int i = 0; i < shown.size(); i++) {
            double wide = (SIGN + STATE_GAP) * u + needs(shown.get(i), size, lines) + spare;
            cells.get(i).lay(shown.get(i), new Box(x, box.y(), wide, box.height()), size, lines, u);
            x += wide + GAP * u;
        }
    }

    /** The size at which all of them have room on so many lines, pixels. */
    private static double size(List<AlarmRow> rows, int lines, double wide, double high, double u) {
        double needed = rows.stream().mapToDouble(row -> needs(row, 1, lines)).sum();
        return Math.min(SIZE * u, Math.min(wide / needed, Words.sizeIn(high, lines)));
    }

    /** Width of an alarm's words and state, with a little for what letters of another size differ by. */
    private static double needs(AlarmRow row, double size, int lines) {
        return 1.03
                * size
                / MEASURED
                * (Words.widthOf(row.words(), Typeface.REGULAR, MEASURED, lines)
                        + Words.widthOf(row.state(), Typeface.REGULAR, MEASURED, lines));
    }

    private static String spoken(List<AlarmRow> alarms) {
        List<String> all = new ArrayList<>();
        for (AlarmRow alarm : alarms) all.add(ViewText.ALARM_WITH_STATE.say(alarm.words(), alarm.state()));
        return String.join(" ", all);
    }

    /** Symbol, words, state. */
    private static final class Cell {
        private final Sign sign = new Sign();
        private final Words words = new Words(Typeface.REGULAR);
        private final Words state = new Words(Typeface.REGULAR);

        void visible(boolean visible) {
            sign.setVisible(visible);
            words.setVisible(visible);
            state.setVisible(visible);
        }

        void lay(AlarmRow alarm, Box box, double size, int lines, double u) {
            String tone = alarm.tone().name().toLowerCase(Locale.ROOT);
            BandBar.restyle(sign, "sign-", alarm.hasPassed() ? tone + "-passed" : tone);
            sign.draw(alarm.tone(), alarm.direction(), box.x() + 16 * u, box.middle(), 14 * u);
            if (alarm.hasPassed()) sign.setStrokeWidth(3.5 * u);
            double stateWide = 1.02 * Words.widthOf(alarm.state(), Typeface.REGULAR, size, lines);
            double wide = box.width() - (SIGN + STATE_GAP) * u - stateWide;
            Box text = new Box(box.x() + SIGN * u, box.y(), wide, box.height());
            double used = words.place(alarm.words(), text, size, lines, Words.Side.LEFT);
            Box rest = new Box(text.x() + used + STATE_GAP * u, box.y(), stateWide, box.height());
            state.place(alarm.state(), rest, size, lines, Words.Side.LEFT);
        }
    }
}
