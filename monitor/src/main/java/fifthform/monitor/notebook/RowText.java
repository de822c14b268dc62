package fifthform.monitor.notebook;

import fifthform.curves.review.Verdict;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookText;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Rows as lines of the index, and back: fields between tabs in a fixed order, then a field for each look. No JSON, since
 * thousands of lines are read before the first row is shown; the looks are, as in their own file.
 */
final class RowText {
    private static final int PLACES = 6;
    private static final char ESCAPE = '\\';
    private static final String IN_TEMPER = ":";

    private RowText() {}

    /** What a line tells. */
    record Kept(Stamp stamp, BatchRow row) {}

    /** A line is no row, or one of a newer program. */
    static final class NoRow extends Exception {
        private static final long serialVersionUID = 1L;

        NoRow(String why, Exception cause) {
            super(why, cause);
        }
    }

    static String line(Kept kept) {
        BatchRow row = kept.row();
        Stamp stamp = kept.stamp();
        Figures figures = row.figures();
        List<String> fields = new ArrayList<>(List.of(
                escaped(String.valueOf(row.file().getFileName())),
                Long.toString(stamp.bytes()),
                Long.toString(stamp.nanos()),
                Long.toString(stamp.looksBytes()),
                Long.toString(stamp.looksNanos()),
                Long.toString(row.start().toEpochMilli()),
                Integer.toString(row.zone().getTotalSeconds()),
                escaped(row.chocolateId()),
                escaped(row.chocolate()),
                escaped(row.bowl()),
                number(row.amountGrams()),
                row.kind().word(),
                beginning(row.beginning()),
                holding(row.holding()),
                Long.toString(row.length().toMillis()),
                Long.toString(row.ended().toEpochMilli()),
                number(figures.peakCelsius()),
                number(figures.lowestCelsius()),
                Long.toString(figures.overRange().toMillis()),
                figures.verdict().word(),
                escaped(figures.crystals().orElse("")),
                Boolean.toString(figures.seedLost()),
                row.condition().word(),
                escaped(row.trouble())));
        fields.add(row.targets().isKnown() ? Decimal.of(row.targets().workLowCelsius(), PLACES) : "");
        fields.add(row.targets().isKnown() ? Decimal.of(row.targets().workHighCelsius(), PLACES) : "");
        fields.add(row.targets().isKnown() ? Decimal.of(row.targets().warnCelsius(), PLACES) : "");
        fields.add(Double.toString(row.curve().stepSeconds()));
        fields.add(number(row.curve().troughSeconds()));
        fields.add(row.curve().digits());
        row.looks().forEach(look -> fields.add(LookText.line(row.name(), look).end()));
        return String.join("\t", fields);
    }

    /** Empty for a whole batch, a colon alone for one in temper, which no session's name is. */
    private static String beginning(Beginning beginning) {
        return beginning.isInTemper()
                ? IN_TEMPER
                : beginning.again().map(RowText::escaped).orElse("");
    }

    private static Beginning beginning(String word) {
        if (word.isEmpty()) return Beginning.WHOLE;
        return word.equals(IN_TEMPER) ? new Beginning.InTemper() : new Beginning.Again(word);
    }

    private static String holding(Optional<Holding> holding) {
        return holding.map(plan -> plan.time().toMillis() + " " + plan.warmth().word())
                .orElse("");
    }

    private static Optional<Holding> holding(String words) {
        if (words.isEmpty()) return Optional.empty();
        String[] parts = words.split(" ", 2);
        return Optional.of(new Holding(
                Duration.ofMillis(Long.parseLong(parts[0])),
                Holding.Warmth.fromWord(parts[1]).orElseThrow()));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Decimal.of(value.getAsDouble(), PLACES) : "";
    }

    /**
     * The row of a line.
     *
     * @param folder where sessions lie
     */
    static Kept read(String text, Path folder) throws NoRow {
        try {
            return read(new Fields(text), folder);
        } catch (UnreadableJson
                | DateTimeException
                | ArithmeticException
                | IllegalArgumentException
                | ArrayIndexOutOfBoundsException
                | NoSuchElementException e) {
            throw new NoRow(String.valueOf(e.getMessage()), e);
        }
    }

    private static Kept read(Fields fields, Path folder) throws UnreadableJson {
        Path file = folder.resolve(fields.text());
        Stamp stamp = new Stamp(fields.whole(), fields.whole(), fields.whole(), fields.whole());
        Instant start = Instant.ofEpochMilli(fields.whole());
        ZoneOffset zone = ZoneOffset.ofTotalSeconds((int) fields.whole());
        String chocolateId = fields.text();
        String chocolate = fields.text();
        String bowl = fields.text();
        OptionalDouble grams = fields.number();
        BatchKind kind = fields.word(BatchKind.values(), BatchKind::word);
        Beginning beginning = beginning(fields.text());
        Optional<Holding> holding = holding(fields.next());
        Duration length = Duration.ofMillis(fields.whole());
        Instant ended = Instant.ofEpochMilli(fields.whole());
        Figures figures = new Figures(
                fields.number(),
                fields.number(),
                Duration.ofMillis(fields.whole()),
                fields.word(Verdict.values(), Verdict::word),
                Optional.of(fields.text()).filter(word -> !word.isEmpty()),
                Boolean.parseBoolean(fields.next()));
        Condition condition = fields.word(Condition.values(), Condition::word);
        String trouble = fields.text();
        Targets targets = new Targets(
                fields.number().orElse(Double.NaN),
                fields.number().orElse(Double.NaN),
                fields.number().orElse(Double.NaN));
        double step = Double.parseDouble(fields.next());
        OptionalDouble trough = fields.number();
        SmallCurve curve = SmallCurve.read(step, fields.next(), trough);
        List<KeptLook> looks = new ArrayList<>();
        while (fields.more()) looks.add(LookText.look(JsonObject.parse(fields.next())));
        BatchRow row = new BatchRow(
                file,
                SessionFiles.name(file),
                start,
                zone,
                chocolateId,
                chocolate,
                bowl,
                grams,
                kind,
                beginning,
                holding,
                length,
                ended,
                figures,
                targets,
                condition,
                trouble,
                looks,
                curve);
        return new Kept(stamp, row);
    }

    /** What people wrote may hold a tab or a line break. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '\t' -> escaped.append(ESCAPE).append('t');
                case '\n' -> escaped.append(ESCAPE).append('n');
                case '\r' -> escaped.append(ESCAPE).append('r');
                case ESCAPE -> escaped.append(ESCAPE).append(ESCAPE);
                default -> escaped.append(c);
            }
        }
        return escaped.toString();
    }

    private static String plain(String escaped) {
        if (escaped.indexOf(ESCAPE) < 0) return escaped;
        StringBuilder text = new StringBuilder(escaped.length());
        for (int i = 0; i < escaped.length(); i++) {
            char c = escaped.charAt(i);
            if (c != ESCAPE || ++i == escaped.length()) {
                text.append(c);
                continue;
            }
            switch (escaped.charAt(i)) {
                case 't' -> text.append('\t');
                case 'n' -> text.append('\n');
                case 'r' -> text.append('\r');
                default -> text.append(escaped.charAt(i));
            }
        }
        return text.toString();
    }

    /** The fields of a line, one after the other. */
    private static final class Fields {
        private final String line;
        private int at;

        Fields(String line) {
            this.line = line;
        }

        boolean more() {
            return at <= line.length();
        }

        String next() {
            if (!more()) throw new IllegalArgumentException("a field is missing");
            int end = line.indexOf('\t', at);
            int to = end < 0 ? line.length() : end;
            String field = line.substring(at, to);
            at = to + 1;
            return field;
        }

        String text() {
            return plain(next());
        }

        long whole() {
            return Long.parseLong(next());
        }

        OptionalDouble number() {
            String field = next();
            return field.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(field));
        }

        <T> T word(T[] choices, Function<T, String> word) {
            String field = next();
            for (T choice : choices) if (word.apply(choice).equals(field)) return choice;
            throw new IllegalArgumentException(field + " is not known");
        }
    }
}
