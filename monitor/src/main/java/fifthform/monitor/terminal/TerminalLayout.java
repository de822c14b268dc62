package fifthform.monitor.terminal;

import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Notice;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Outlook;
import fifthform.monitor.model.WatchPicture.Tile;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.texts.TerminalText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;

/**
 * The Watch screen in letters: a pure function from a picture and a size to lines. The line that says what to do is
 * always there; the smaller the terminal, the more of the rest is left out, the least needed first.
 *
 * @param ink with or without colours
 * @param letters what the terminal can print
 */
public record TerminalLayout(Ink ink, Letters letters) {
    /** Digits, rate and three lines of outlook. */
    private static final int MAIN_ROWS = BigDigits.ROWS + 1 + 3;

    private static final int LEAST_TRACE_ROWS = 5;

    /** Columns from which on more fits beside the numeral. */
    private static final int WIDE = 110;

    public TerminalLayout {
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(letters, "letters");
    }

    /** Exactly {@code rows} lines of exactly {@code columns} letters. */
    public List<AttributedString> lay(WatchPicture picture, int columns, int rows) {
        Sheet sheet = new Sheet(Math.max(1, columns), Math.max(1, rows), letters);
        int row = 0;
        if (rows >= 8) row = top(sheet, picture);
        row = band(sheet, picture.band(), row);
        int bottom = foot(sheet, picture, row);
        main(sheet, picture, row, bottom);
        return sheet.lines();
    }

    private int top(Sheet sheet, WatchPicture picture) {
        int at = 0;
        if (picture.simulated()) at = sheet.put(0, 0, TerminalText.PRACTICE_SIMULATED_BOWL.say(), ink.bold()) + 2;
        sheet.put(0, at, picture.heading(), ink.plain());
        sheet.putBefore(0, sheet.columns(), " " + picture.clock(), ink.plain());
        if (sheet.rows() < 14) return 1;
        int end = sheet.columns();
        List<Mark> marks = picture.marks();
        for (int i = marks.size() - 1; i >= 0; i--) {
            Mark mark = marks.get(i);
            String words = mark.good() ? TerminalText.OK.say(mark.word()) : TerminalText.NOT_OK.say(mark.word());
            end = sheet.putBefore(1, end, words, mark.good() ? ink.quiet() : ink.warning()) - 2;
        }
        // What does not fit beside the marks goes, rather than run into them.
        List<String> subject = sheet.wrapped(picture.subject(), Math.max(1, end));
        if (!subject.isEmpty()) sheet.put(1, 0, subject.get(0), ink.quiet());
        return 2;
    }

    private int band(Sheet sheet, Band band, int from) {
        AttributedStyle style = ink.band(band.tone());
        String words = sign(band.tone(), band.direction()) + band.headline();
        List<String> lines = new ArrayList<>(sheet.wrapped(words, Math.max(1, sheet.columns() - 2)));
        boolean beside = lines.size() == 1 && sheet.width(words) + sheet.width(band.aside()) + 5 <= sheet.columns();
        if (!beside && !band.aside().isEmpty() && sheet.rows() >= 8)
            lines.addAll(sheet.wrapped(band.aside(), Math.max(1, sheet.columns() - 2)));
        boolean padded = sheet.rows() >= 34;
        int row = from;
        if (padded) paint(sheet, row++, style, band.tone());
        for (String line : lines) {
            paint(sheet, row, style, band.tone());
            sheet.put(row, 1, line, style);
            if (beside) sheet.putBefore(row, sheet.columns() - 1, band.aside(), style);
            row++;
        }
        if (padded) paint(sheet, row++, style, band.tone());
        return row;
    }

    private static void paint(Sheet sheet, int row, AttributedStyle style, Tone tone) {
        if (tone != Tone.CALM && tone != Tone.ADVISE) sheet.paint(row, style);
    }

    /** Shape and word, for when there are no colours. */
    private static String sign(Tone tone, Direction direction) {
        return switch (tone) {
            case CALM -> "";
            case CUE -> ">>> ";
            case ADVISE -> TerminalText.ADVISE_TERMINAL_LAYOUT.say();
            case PROMPT ->
                switch (direction) {
                    case UP -> TerminalText.PROMPT_RAISE.say();
                    case DOWN -> TerminalText.PROMPT_LOWER.say();
                    case NONE -> TerminalText.PROMPT_PLAIN.say();
                };
            case URGENT -> TerminalText.URGENT_TERMINAL_LAYOUT.say();
        };
    }

    /** From the last line up: keys, foot, notice, alarms, each only while enough rows are left for the numeral. */
    private int foot(Sheet sheet, WatchPicture picture, int from) {
        int free = sheet.rows();
        List<AlarmRow> alarms =
                picture.alarms().subList(0, Math.min(3, picture.alarms().size()));
        int wanted = from + (sheet.rows() >= 18 ? MAIN_ROWS : 1);
        List<String> keys = sheet.wrapped(picture.keys(), sheet.columns());
        free = block(sheet, keys, free, wanted, ink.quiet());
        String undo = picture.undo().orElse("");
        String last = undo.isEmpty() ? picture.foot() : undo;
        List<String> foot = sheet.wrapped(last, sheet.columns());
        free = block(sheet, foot, free, wanted, undo.isEmpty() ? ink.plain() : ink.bold());
        free = block(sheet, sheet.wrapped(picture.crystals().line(), sheet.columns()), free, wanted, ink.plain());
        for (int i = alarms.size() - 1; i >= 0; i--) {
            AlarmRow alarm = alarms.get(i);
            String words = sign(alarm.tone(), alarm.direction()) + alarm.words() + " (" + alarm.state() + ")";
            free = block(
                    sheet,
                    sheet.wrapped(words, sheet.columns()),
                    free,
                    wanted,
                    alarm.tone() == Tone.URGENT ? ink.warning() : ink.bold());
        }
        String notice = picture.banner().orElse("");
        boolean room = alarms.isEmpty() || picture.notice() == Notice.ASKED;
        if (!notice.isEmpty() && room)
            free = block(sheet, sheet.wrapped(notice, sheet.columns()), free, wanted, ink.plain());
        return free;
    }

    /** Writes lines that end above row {@code end}, unless they would reach above {@code wanted}; returns their first row. */
    private static int block(Sheet sheet, List<String> lines, int end, int wanted, AttributedStyle style) {
        int from = end - lines.size();
        if (from < wanted) return end;
        for (int i = 0; i < lines.size(); i++) sheet.put(from + i, 0, lines.get(i), style);
        return from;
    }

    private void main(Sheet sheet, WatchPicture picture, int from, int end) {
        int rows = end - from;
        if (rows < MAIN_ROWS || sheet.columns() < 50) {
            small(sheet, picture, from, end);
            return;
        }
        int traceRows =
                rows >= MAIN_ROWS + LEAST_TRACE_ROWS ? Math.max(LEAST_TRACE_ROWS, (rows - MAIN_ROWS) * 3 / 4) : 0;
        if (rows - MAIN_ROWS < 10) traceRows = rows - MAIN_ROWS >= LEAST_TRACE_ROWS - 1 ? rows - MAIN_ROWS : 0;
        int high = rows - traceRows;
        boolean wide = sheet.columns() >= WIDE;
        int ladderAt = wide ? sheet.columns() * 6 / 10 : Math.max(36, sheet.columns() - 46);
        int start = from + (high - MAIN_ROWS) / 2;
        int row = numeral(sheet, picture.numeral(), start);
        rate(sheet, picture, row);
        outlooks(sheet, picture, row + 1);
        // What the next minutes bring needs the whole width of a narrow terminal.
        int ladderRows = wide ? high : start - from + BigDigits.ROWS;
        LadderText.draw(sheet, ink, letters, picture.ladder(), from, ladderRows, ladderAt);
        TraceText.draw(sheet, ink, letters, picture.trace(), end - traceRows, traceRows);
    }

    /** Too few rows for large digits: one line a thing, as many as there are. */
    private void small(Sheet sheet, WatchPicture picture, int from, int end) {
        List<String> lines = new ArrayList<>();
        lines.add(spoken(picture.numeral()));
        lines.add(picture.rate());
        if (!picture.numeral().doubt().isEmpty()) lines.add(picture.numeral().doubt());
        for (Outlook outlook : picture.outlooks())
            lines.add(outlook.label() + " " + outlook.value() + ", " + outlook.detail());
        for (int i = 0; i < lines.size() && from + i < end; i++)
            sheet.put(from + i, 0, lines.get(i), i == 0 ? ink.bold() : ink.plain());
    }

    private static String spoken(Numeral numeral) {
        String value = numeral.whole() + numeral.hundredths() + " " + numeral.unit();
        return numeral.stale()
                .map(age -> TerminalText.OLD_DO_NOT_TRUST.say(value, age))
                .orElse(value);
    }

    private int numeral(Sheet sheet, Numeral numeral, int row) {
        int after = BigDigits.draw(sheet, row, 1, numeral.whole(), letters.block(), ink.bold());
        int foot = row + BigDigits.ROWS - 1;
        int end = sheet.put(foot, after, numeral.hundredths() + " " + numeral.unit(), ink.bold());
        if (numeral.stale().isPresent()) {
            sheet.put(row + 2, 0, "=".repeat(after - 1), ink.warning());
            sheet.put(row + 1, after, numeral.stale().get(), ink.warning());
            sheet.put(row + 2, after, TerminalText.STRUCK_OUT.say(), ink.warning());
        }
        return Math.max(foot, Math.min(foot, end)) + 1;
    }

    private void rate(Sheet sheet, WatchPicture picture, int row) {
        int after = sheet.put(row, 1, picture.rate(), ink.plain());
        if (sheet.columns() >= WIDE) sheet.put(row, after + 2, picture.numeral().doubt(), ink.quiet());
    }

    private void outlooks(Sheet sheet, WatchPicture picture, int row) {
        List<Outlook> outlooks = picture.outlooks();
        int labels = outlooks.stream()
                .mapToInt(line -> sheet.width(line.label()))
                .max()
                .orElse(0);
        int at = row;
        for (Outlook outlook : outlooks.subList(0, Math.min(3, outlooks.size()))) {
            sheet.put(at, 1, outlook.label(), ink.plain());
            int after = sheet.put(at, labels + 3, outlook.value(), ink.bold());
            sheet.put(at, after + 2, outlook.detail(), ink.quiet());
            at++;
        }
        if (at < row + 3) slow(sheet, picture, at);
    }

    /** Where there is no room beside the rate, what the number is worth stands before the slow values. */
    private void slow(Sheet sheet, WatchPicture picture, int row) {
        String doubt = sheet.columns() >= WIDE ? "" : picture.numeral().doubt();
        int at = doubt.isEmpty() ? 1 : sheet.put(row, 1, doubt, ink.quiet()) + 3;
        for (Tile tile : picture.tiles()) {
            boolean outside = tile.value() < tile.low() || tile.value() > tile.high();
            String words = String.format(
                    Locale.ROOT, "%s %." + tile.decimals() + "f %s", tile.title(), tile.value(), tile.unit());
            String said = tile.value() > tile.high()
                    ? TerminalText.TOO_HIGH.say()
                    : outside ? TerminalText.TOO_LOW.say() : "";
            at = sheet.put(row, at, words + said, outside ? ink.warning() : ink.plain()) + 3;
        }
    }
}
