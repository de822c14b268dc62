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
        int shown = Math.min(MOST, alarms.size());
        int left = alarms.size() - shown;
        String rest = left == 0 ? "" : ViewText.AND_MORE.say(left);
        double restWide = left == 0 ? 0 : 130 * u;
        more.place(
                rest,
                new Box(box.right() - restWide, box.y(), Math.max(u, restWide), box.height()),
                24 * u,
                1,
                Words.Side.RIGHT);
        double gap = 28 * u;
        double wide = (box.width() - restWide - gap * Math.max(0, shown - 1)) / Math.max(1, shown);
        for (int i = 0; i < MOST; i++) {
            Cell cell = cells.get(i);
            cell.visible(i < shown);
            if (i < shown) cell.lay(alarms.get(i), new Box(box.x() + i * (wide + gap), box.y(), wide, box.height()), u);
        }
        setAccessibleText(spoken(alarms));
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
        private final Words state = new Words(Typeface.REGULAR, "quiet");

        void visible(boolean visible) {
            sign.setVisible(visible);
            words.setVisible(visible);
            state.setVisible(visible);
        }

        void lay(AlarmRow alarm, Box box, double u) {
            BandBar.restyle(sign, "sign-", alarm.tone().name().toLowerCase(Locale.ROOT));
            sign.draw(alarm.tone(), alarm.direction(), box.x() + 16 * u, box.middle(), 14 * u);
            double stateWide =
                    Math.min(box.width() * 0.3, Words.widthOf(alarm.state(), Typeface.REGULAR, 22 * u) + 2 * u);
            Box text = new Box(box.x() + 44 * u, box.y(), box.width() - 44 * u - stateWide - 14 * u, box.height());
            double used = words.place(alarm.words(), text, 25 * u, 2, Words.Side.LEFT);
            state.place(
                    alarm.state(),
                    new Box(text.x() + used + 14 * u, box.y(), stateWide, box.height()),
                    22 * u,
                    2,
                    Words.Side.LEFT);
        }
    }
}
