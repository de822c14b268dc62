package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartRow;
import fifthform.monitor.start.StartStep;
import fifthform.monitor.texts.StartText;
import fifthform.monitor.view.WordButton.Second;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/**
 * The start page: three steps, each a list of large rows, and beside it what is known of the row that is chosen.
 *
 * <p>Lengths are design units: the design is 1600 × 900, as of Watch.
 */
final class StartScreen extends Region {
    private static final double MARGIN = 40;
    private static final double ROW = 76;
    private static final double GAP = 8;
    private static final double LIST = 800;
    private static final int MOST_DETAILS = 7;

    /** Letters and lines of a detail. */
    private static final double DETAIL = 33;

    private static final double DETAIL_LINE = 40;
    private static final int MOST_LINES = 3;

    /** What went wrong takes this from the lists. */
    private static final double FOR_PROBLEM = 44;

    private final StartDesk desk;
    private final Acts acts;
    private final Words title = new Words(Typeface.BOLD);
    private final Words probe = new Words(Typeface.REGULAR);
    private final Map<StartStep, WordButton> steps = new EnumMap<>(StartStep.class);
    private final List<WordButton> rows = new ArrayList<>();
    private final Rectangle panel = new Rectangle();
    private final List<Words> details = new ArrayList<>();
    private final WordButton less = new WordButton("less", Second.BELOW, () -> grams(-1));
    private final WordButton more = new WordButton("more", Second.BELOW, () -> grams(1));
    private final Words line = new Words(Typeface.REGULAR);
    private final Words problem = new Words(Typeface.BOLD, "warning");
    private final Sign sign = new Sign();
    private final Map<StartKey, WordButton> keys = new EnumMap<>(StartKey.class);
    private Theme theme = Theme.BRIGHT;

    /** What the page asks of its window. */
    interface Acts {
        void pressed(StartKey key);
    }

    StartScreen(StartDesk desk, Acts acts) {
        this.desk = desk;
        this.acts = acts;
        getStyleClass().addAll("watch", "start");
        panel.getStyleClass().add("panel");
        panel.setManaged(false);
        getChildren().addAll(title, probe, panel, less, more, line, problem, sign);
        sign.getStyleClass().add("sign-urgent");
        for (StartStep step : StartStep.values()) {
            WordButton button = new WordButton("step-" + step.ordinal(), Second.BESIDE, () -> open(step));
            steps.put(step, button);
            getChildren().add(button);
        }
        for (int i = 0; i < MOST_DETAILS; i++) {
            Words words = new Words(Typeface.REGULAR);
            details.add(words);
            getChildren().add(words);
        }
        for (StartKey key : StartKey.values()) {
            WordButton button = new WordButton("start-" + key.id(), Second.BELOW, () -> acts.pressed(key));
            keys.put(key, button);
            getChildren().add(button);
        }
        wear(theme);
    }

    void wear(Theme wanted) {
        theme = wanted;
        getStylesheets().setAll(wanted.styleSheets());
    }

    Theme theme() {
        return theme;
    }

    void show() {
        requestLayout();
    }

    private void open(StartStep step) {
        // Only back: what lies ahead is reached by taking a row.
        if (step.ordinal() <= desk.step().ordinal()) desk.open(step);
        show();
    }

    private void grams(int by) {
        desk.grams(by);
        show();
    }

    /** A click on a row shows it; another one takes it, so that a wet hand starts nothing by a slip. */
    private void clicked(int row) {
        if (row == desk.selected()) acts.pressed(StartKey.TAKE);
        else desk.select(row);
        show();
    }

    @Override
    protected void layoutChildren() {
        if (getWidth() <= 0 || getHeight() <= 0) return;
        double u = Math.min(getWidth() / 1600, getHeight() / 900);
        double wide = getWidth() / u - 2 * MARGIN;
        double high = getHeight() / u;
        title.place(StartText.TITLE.say(), new Box(MARGIN, 8, wide * 0.4, 52).times(u), 34 * u, 1, Words.Side.LEFT);
        probe.place(
                probeWords(), new Box(MARGIN + wide * 0.42, 8, wide * 0.58, 52).times(u), 25 * u, 1, Words.Side.RIGHT);
        laySteps(wide, u);
        double foot = high - 84;
        layKeys(new Box(MARGIN, foot, wide, 72), u);
        double forProblem = desk.problem().isEmpty() ? 0 : FOR_PROBLEM;
        layLine(new Box(MARGIN, foot - 66 - forProblem, wide, 56 + forProblem), u);
        double top = 156;
        double bottom = foot - 76 - forProblem;
        layRows(new Box(MARGIN, top, LIST, bottom - top), u);
        layDetails(new Box(MARGIN + LIST + 24, top, wide - LIST - 24, bottom - top), u);
    }

    /** The probe's last check stands at the top in every step, as its mark does on Watch. */
    private String probeWords() {
        if (desk.probes().isEmpty()) return StartText.LOOKING.say();
        List<SeenProbe> seen = desk.probes().get();
        return seen.isEmpty()
                ? StartText.NO_PROBE.say()
                : seen.get(0).port() + " · " + seen.get(0).check();
    }

    private void laySteps(double wide, double u) {
        double each = (wide - 2 * GAP) / 3;
        for (Map.Entry<StartStep, WordButton> entry : steps.entrySet()) {
            StartStep step = entry.getKey();
            WordButton button = entry.getValue();
            boolean now = step == desk.step();
            button.chosen(now);
            button.setDisable(step.ordinal() > desk.step().ordinal());
            String words = now || step.ordinal() > desk.step().ordinal() ? step.words() : desk.heading(step);
            button.setAccessibleText(words);
            button.lay(
                    String.valueOf(step.ordinal() + 1),
                    words,
                    "",
                    new Box(MARGIN + step.ordinal() * (each + GAP), 70, each, 70).times(u),
                    u);
        }
    }

    private void layRows(Box box, double u) {
        List<StartRow> wanted = desk.rows();
        while (rows.size() < wanted.size()) {
            int place = rows.size();
            WordButton button = new WordButton("row-" + place, Second.BESIDE, () -> clicked(place));
            rows.add(button);
            getChildren().add(button);
        }
        int fit = Math.max(1, (int) Math.floor((box.height() + GAP) / (ROW + GAP)));
        int first = Math.max(0, Math.min(desk.selected() - fit / 2, wanted.size() - fit));
        for (int i = 0; i < rows.size(); i++) {
            WordButton button = rows.get(i);
            boolean shown = i < wanted.size() && i >= first && i < first + fit;
            button.setVisible(shown);
            if (!shown) continue;
            StartRow row = wanted.get(i);
            button.chosen(i == desk.selected());
            button.setAccessibleText(
                    StartText.ROW_SPOKEN.say(row.words(), row.aside(), String.join(" ", row.details())));
            double y = box.y() + (i - first) * (ROW + GAP);
            String number = i < 9 ? String.valueOf(i + 1) : "";
            button.lay(number, row.words(), row.aside(), new Box(box.x(), y, box.width(), ROW).times(u), u);
        }
    }

    private void layDetails(Box box, double u) {
        Box place = box.times(u);
        panel.setX(place.x());
        panel.setY(place.y());
        panel.setWidth(place.width());
        panel.setHeight(place.height());
        boolean amount = desk.step() == StartStep.BOWL;
        double forAmount = amount ? ROW + 16 : 0;
        less.setVisible(amount);
        more.setVisible(amount);
        if (amount) {
            double half = (box.width() - 3 * 16) / 2;
            double y = box.bottom() - ROW - 16;
            less.lay("←", "− 50 g", new Box(box.x() + 16, y, half, ROW).times(u), u);
            more.lay("→", "+ 50 g", new Box(box.x() + 32 + half, y, half, ROW).times(u), u);
            less.setAccessibleText(StartText.KEY_SPOKEN.say("− 50 g", "←"));
            more.setAccessibleText(StartText.KEY_SPOKEN.say("+ 50 g", "→"));
        }
        List<String> words = words();
        double wide = box.width() - 44;
        double room = box.height() - forAmount - 24;
        int lines = words.stream().mapToInt(said -> lines(said, wide)).sum();
        double gap = Math.min(56, Math.max(10, (room - lines * DETAIL_LINE) / Math.max(1, words.size())));
        double line = Math.min(DETAIL_LINE, (room - words.size() * gap) / Math.max(1, lines));
        double y = box.y() + 12;
        for (int i = 0; i < MOST_DETAILS; i++) {
            String said = i < words.size() ? words.get(i) : "";
            double high = lines(said, wide) * line;
            details.get(i)
                    .place(
                            said,
                            new Box(box.x() + 22, y + gap / 2, wide, high).times(u),
                            DETAIL * u,
                            MOST_LINES,
                            Words.Side.LEFT);
            y += high + gap;
        }
    }

    /** On how many lines words stand in letters of full size, or so nearly that one more is not worth it. */
    private static int lines(String words, double wide) {
        int lines = 1;
        while (lines < MOST_LINES && Words.widthOf(words, Typeface.REGULAR, DETAIL, lines) > 1.02 * wide) lines++;
        return lines;
    }

    /** In the last step also what was chosen, and the cautions of a real bowl. */
    private List<String> words() {
        List<String> words = new ArrayList<>();
        if (desk.step() == StartStep.GO) words.add(desk.chosen());
        words.addAll(desk.rows().get(desk.selected()).details());
        if (desk.step() == StartStep.GO) words.addAll(desk.cautions());
        return words.subList(0, Math.min(MOST_DETAILS, words.size()));
    }

    /** What went wrong; else what one key would do. */
    private void layLine(Box box, double u) {
        Box wrong = new Box(box.x() + 56, box.y() + 8, box.width() - 56, box.height() - 24);
        problem.place(desk.problem(), wrong.times(u), 28 * u, 2, Words.Side.LEFT);
        Tone tone = desk.problem().isEmpty() ? Tone.CALM : Tone.URGENT;
        sign.draw(tone, Direction.NONE, (box.x() + 22) * u, wrong.middle() * u, 20 * u);
        List<String> said = new ArrayList<>();
        if (desk.isWaiting()) {
            said.add(StartText.WAITING.say());
        } else {
            desk.last().ifPresent(last -> said.add(StartText.LAST_LINE.say(StartKey.AS_LAST.cap(), last)));
            desk.cutOff().ifPresent(batch -> said.add(StartText.GO_ON_LINE.say(StartKey.GO_ON.cap(), batch)));
        }
        String words = desk.problem().isEmpty() ? String.join("     ", said) : "";
        line.place(words, box.times(u), 28 * u, 2, Words.Side.LEFT);
    }

    private void layKeys(Box box, double u) {
        List<StartKey> shown = new ArrayList<>();
        for (StartKey key : StartKey.values()) {
            boolean wanted = key.isShown(desk) && !desk.isWaiting();
            keys.get(key).setVisible(wanted);
            if (wanted) shown.add(key);
        }
        double each = (box.width() - GAP * Math.max(0, shown.size() - 1)) / Math.max(1, shown.size());
        double x = box.x();
        for (StartKey key : shown) {
            String word = key.word(desk.step());
            keys.get(key).setAccessibleText(StartText.KEY_SPOKEN.say(word, key.cap()));
            keys.get(key).lay(key.cap(), word, new Box(x, box.y(), each, box.height()).times(u), u);
            x += each + GAP;
        }
    }
}
