package fifthform.monitor.terminal;

import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The ladder of limits in letters, to the scale that whole rows allow. */
final class LadderText {
    private static final int INSIDE = 4;

    private final Sheet sheet;
    private final Ink ink;
    private final Letters letters;
    private final Ladder ladder;
    private final int top;
    private final int rows;
    private final int wall;

    private LadderText(Sheet sheet, Ink ink, Letters letters, Ladder ladder, int top, int rows, int column) {
        this.sheet = sheet;
        this.ink = ink;
        this.letters = letters;
        this.ladder = ladder;
        this.top = top;
        this.rows = rows;
        wall = column + 9;
    }

    static void draw(Sheet sheet, Ink ink, Letters letters, Ladder ladder, int top, int rows, int column) {
        if (rows < 3 || sheet.columns() - column < 16) return;
        new LadderText(sheet, ink, letters, ladder, top, rows, column).all();
    }

    private void all() {
        for (int row = top; row < top + rows; row++) {
            sheet.put(row, wall, "|", ink.plain());
            sheet.put(row, wall + INSIDE + 1, "|", ink.plain());
        }
        rungs();
        for (int row = row(ladder.bandHighShown()); row <= row(ladder.bandLowShown()); row++)
            sheet.put(row, wall + 1, letters.shade().repeat(INSIDE), ink.quiet());
        // Strong ones last: where two share a row, the one that matters more is seen.
        List<Limit> limits = new ArrayList<>(ladder.limits());
        limits.sort(Comparator.comparing(Limit::weight).reversed());
        for (Limit limit : limits) {
            String line = limit.weight() == Limit.Weight.STRONG ? "=" : "-";
            sheet.put(row(limit.atShown()), wall + 1, line.repeat(INSIDE), ink.limit());
        }
        peakBand();
        ladder.peakShown().ifPresent(peak -> sheet.put(row(peak), wall + 2, "(o", ink.forecast()));
        ladder.peakShown().ifPresent(peak -> sheet.put(row(peak), wall + 4, ")", ink.forecast()));
        ladder.nowShown().ifPresent(now -> sheet.put(row(now), wall - 3, pointer(now), ink.bold()));
        names();
    }

    /** How far up and down the turning point may lie: a wide one must be seen. */
    private void peakBand() {
        if (ladder.peakLowShown().isEmpty() || ladder.peakHighShown().isEmpty()) return;
        int low = row(ladder.peakLowShown().getAsDouble());
        for (int row = row(ladder.peakHighShown().getAsDouble()); row <= low; row++)
            sheet.put(row, wall + 3, "|", ink.forecast());
    }

    private String pointer(double now) {
        if (now > ladder.topShown()) return " ^ ";
        return now < ladder.bottomShown() ? " v " : "==>";
    }

    private int row(double shown) {
        double share = (ladder.topShown() - shown) / (ladder.topShown() - ladder.bottomShown());
        return top + (int) Math.round(Math.max(0, Math.min(1, share)) * (rows - 1));
    }

    /** The scale: both ends and what lies between them where rows are free. */
    private void rungs() {
        double step = ladder.stepShown();
        int last = Integer.MAX_VALUE;
        for (double rung = Math.ceil(ladder.bottomShown() / step) * step;
                rung <= ladder.topShown() + 1e-9;
                rung += step) {
            int row = row(rung);
            if (row == last) continue;
            last = row;
            sheet.putBefore(row, wall - 4, String.format(Locale.ROOT, step < 1 ? "%.1f" : "%.0f", rung), ink.quiet());
        }
    }

    private void names() {
        List<Name> names = new ArrayList<>();
        for (Limit limit : ladder.limits()) names.add(new Name(limit.name(), limit.detail(), row(limit.atShown())));
        if (!ladder.bandName().isEmpty()) {
            int middle = (row(ladder.bandLowShown()) + row(ladder.bandHighShown())) / 2;
            names.add(new Name(ladder.bandName(), ladder.bandDetail(), middle));
        }
        names.sort(Comparator.comparingInt(Name::row));
        int free = top;
        for (int i = 0; i < names.size(); i++) {
            int latest = top + rows - (names.size() - i);
            int row = Math.max(free, Math.min(names.get(i).row(), latest));
            int after = sheet.put(row, wall + INSIDE + 3, names.get(i).words(), ink.plain());
            sheet.put(row, after + 1, names.get(i).detail(), ink.quiet());
            free = row + 1;
        }
    }

    private record Name(String words, String detail, int row) {}
}
