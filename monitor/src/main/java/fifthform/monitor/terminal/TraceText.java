package fifthform.monitor.terminal;

import fifthform.curves.crystal.SeedWord;
import fifthform.monitor.model.WatchPicture.FanPoint;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Point;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.texts.TerminalText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jline.utils.AttributedStyle;

/** The curve in letters: measured as {@code *}, forecast as {@code o} in its band of dots, limit as a line, range shaded. */
final class TraceText {
    private static final int LABELS = 7;

    /** With fewer there is no room for the strip of crystals as well. */
    private static final int LEAST_ROWS = 4;

    private final Sheet sheet;
    private final Ink ink;
    private final Letters letters;
    private final Trace trace;
    private final int top;
    private final int rows;
    private final OptionalInt stripRow;

    private TraceText(Sheet sheet, Ink ink, Letters letters, Trace trace, int top, int rows) {
        this.sheet = sheet;
        this.ink = ink;
        this.letters = letters;
        this.trace = trace;
        this.top = top + 1;
        boolean strip = !trace.crystals().isEmpty() && rows > LEAST_ROWS;
        this.rows = rows - (strip ? 2 : 1);
        this.stripRow = strip ? OptionalInt.of(this.top + this.rows) : OptionalInt.empty();
    }

    /** Draws into {@code rows} rows from {@code top}, the first of them for the flags. */
    static void draw(Sheet sheet, Ink ink, Letters letters, Trace trace, int top, int rows) {
        if (rows < LEAST_ROWS || sheet.columns() < 30) return;
        new TraceText(sheet, ink, letters, trace, top, rows).all();
    }

    private void all() {
        int wide = sheet.columns() - LABELS;
        for (int row = row(trace.bandHighShown()); row <= row(trace.bandLowShown()); row++)
            sheet.put(row, LABELS, letters.shade().repeat(wide), ink.quiet());
        trace.limitShown().ifPresent(limit -> sheet.put(row(limit), LABELS, "-".repeat(wide), ink.limit()));
        int now = column(trace.now());
        boolean past = trace.past().isPresent();
        for (int row = top; row < top + rows; row++) if (!past) sheet.put(row, now, "|", ink.quiet());
        trace.flags().stream()
                .filter(flag -> flag.weight() == Flag.Weight.THROUGH && isShown(flag))
                .forEach(this::through);
        trace.fan().forEach(this::band);
        for (FanPoint point : trace.fan()) sheet.put(row(point.shown()), column(point.at()), "o", ink.forecast());
        for (Point point : trace.points()) sheet.put(row(point.shown()), column(point.at()), "*", ink.bold());
        labels();
        flags(now);
        stripRow.ifPresent(this::crystals);
    }

    /** What was said of the crystals, under the curve on the same time; a letter for each word, the word where it fits. */
    private void crystals(int row) {
        sheet.putBefore(row, LABELS - 1, TerminalText.CRYST.say(), ink.quiet());
        for (Stretch stretch : trace.crystals()) {
            int from = column(stretch.from());
            int wide = Math.max(1, column(stretch.to()) - from);
            AttributedStyle style = stretch.word() == SeedWord.ENOUGH ? ink.bold() : ink.plain();
            sheet.put(row, from, letter(stretch).repeat(wide), style);
            String words = " " + stretch.words() + " ";
            int at = (wide - sheet.width(words)) / 2;
            if (at >= 1) sheet.put(row, from + at, words, style);
        }
    }

    private static String letter(Stretch stretch) {
        if (stretch.thick()) return "#";
        return switch (stretch.word()) {
            case ENOUGH -> "=";
            case DOUBTFUL -> "/";
            case TOO_FEW -> ".";
        };
    }

    private void band(FanPoint point) {
        int low = row(point.lowShown());
        for (int row = row(point.highShown()); row <= low; row++)
            sheet.put(row, column(point.at()), ".", ink.forecast());
    }

    /** A line through the whole curve, apart from the one of now. */
    private void through(Flag flag) {
        for (int row = top; row < top + rows; row++) sheet.put(row, column(flag.at()), "!", ink.bold());
    }

    private boolean isShown(Flag flag) {
        return !flag.at().isBefore(trace.from()) && !flag.at().isAfter(trace.to());
    }

    private int column(Instant at) {
        double span = Duration.between(trace.from(), trace.to()).toMillis();
        double share = span <= 0 ? 0 : Duration.between(trace.from(), at).toMillis() / span;
        return LABELS + (int) Math.floor(Math.max(0, Math.min(0.9999, share)) * (sheet.columns() - LABELS));
    }

    private int row(double shown) {
        double share = (trace.topShown() - shown) / (trace.topShown() - trace.bottomShown());
        return top + (int) Math.round(Math.max(0, Math.min(1, share)) * (rows - 1));
    }

    /** The limit's figure first; the others only where their row is free. */
    private void labels() {
        List<Integer> taken = new ArrayList<>();
        trace.limitShown().ifPresent(limit -> label(limit, taken));
        label(trace.bandHighShown(), taken);
        label(trace.bandLowShown(), taken);
        OptionalDouble lowest =
                trace.points().stream().mapToDouble(Point::shown).min();
        lowest.ifPresent(shown -> label(shown, taken));
    }

    private void label(double shown, List<Integer> taken) {
        int row = row(shown);
        if (taken.contains(row)) return;
        taken.add(row);
        sheet.putBefore(row, LABELS - 1, String.format(Locale.ROOT, "%.1f", shown), ink.quiet());
    }

    private void flags(int now) {
        List<int[]> taken = new ArrayList<>();
        // What is marked through the curve has its word before all others: it is why somebody looks there.
        trace.flags().stream()
                .filter(flag -> flag.weight() == Flag.Weight.THROUGH && isShown(flag))
                .forEach(flag -> flag("'" + flag.word(), column(flag.at()), taken));
        flag(trace.past().map(words -> "<<< " + words).orElse(TerminalText.NOW.say()), now, taken);
        List<Flag> newestFirst = new ArrayList<>(trace.flags());
        newestFirst.sort(Comparator.comparing(Flag::at).reversed());
        for (Flag flag : newestFirst)
            if (flag.weight() == Flag.Weight.TICK && isShown(flag)) flag("'" + flag.word(), column(flag.at()), taken);
    }

    private void flag(String word, int column, List<int[]> taken) {
        int from = Math.min(column, sheet.columns() - sheet.width(word));
        int to = from + sheet.width(word);
        for (int[] other : taken) if (from <= other[1] && to >= other[0]) return;
        taken.add(new int[] {from, to});
        sheet.put(top - 1, from, word, ink.quiet());
    }
}
