package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * One line by itself, before its neighbours are asked.
 *
 * @param bytes without the line end
 * @param kind what it says, as far as it can say that alone
 * @param fields its numbers, where it could be read
 * @param plan for {@link Kind#READINGS} which number is what
 * @param signals for {@link Kind#SIGNALS} those
 * @param header for {@link Kind#HEADER} the names of columns
 * @param front what a torn beginning can be told by
 */
record Line(
        int bytes,
        Kind kind,
        List<Field> fields,
        Plan plan,
        List<Signal> signals,
        Optional<Header> header,
        Front front) {
    /** What a line says. */
    enum Kind {
        READINGS,
        /** Signals as they are: a fault in words, or what a grammar of its own made of the line. */
        SIGNALS,
        /** The cold junction and nothing else. */
        JUNCTION,
        /** Bare numbers, whose meaning only following lines can tell. */
        COLUMNS,
        HEADER,
        NOTHING
    }

    /**
     * How the line begins.
     *
     * @param skeleton the text with every number replaced: lines of one kind have equal skeletons
     * @param firstNumber the only number that a torn beginning can spoil
     */
    record Front(String skeleton, Optional<Written> firstNumber) {
        static Front of(String text) {
            Optional<Written> first = NUMBER.matcher(text)
                    .results()
                    .findFirst()
                    .map(MatchResult::group)
                    .flatMap(Written::of);
            return new Front(NUMBER.matcher(text).replaceAll("#").replaceAll("\\s+", " "), first);
        }
    }

    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");
    private static final Predicate<String> HAS_DIGIT = Pattern.compile("\\d").asPredicate();

    /** A line of text or a JSON object. */
    static Line of(String text, int bytes) {
        return text.startsWith("{") ? ofJson(text, bytes) : ofText(text, bytes);
    }

    /** A JSON object; anything else is nothing. */
    static Line ofJson(String text, int bytes) {
        return text.startsWith("{")
                ? of(text, bytes, JsonFields.read(text).orElse(List.of()))
                : new Line(bytes, Kind.NOTHING, List.of(), Plan.NOTHING, List.of(), Optional.empty(), Front.of(text));
    }

    private static Line ofText(String text, int bytes) {
        Line numbers = of(text, bytes, FieldGrammar.read(text).orElse(List.of()));
        if (numbers.kind != Kind.NOTHING) return numbers;
        Optional<Signal> word = HAS_DIGIT.test(text) ? Optional.empty() : FaultWords.read(text);
        if (word.isPresent())
            return new Line(
                    bytes, Kind.SIGNALS, List.of(), Plan.NOTHING, List.of(word.get()), Optional.empty(), numbers.front);
        Optional<Header> header = Header.read(text);
        Kind kind = header.isPresent() ? Kind.HEADER : Kind.NOTHING;
        return new Line(bytes, kind, List.of(), Plan.NOTHING, List.of(), header, numbers.front);
    }

    private static Line of(String text, int bytes, List<Field> fields) {
        Plan plan = Plan.NOTHING;
        Kind kind = Kind.NOTHING;
        if (!fields.isEmpty() && fields.stream().allMatch(Field::isBare)) {
            kind = Kind.COLUMNS;
        } else {
            plan = Plan.of(fields);
            if (!plan.readings().isEmpty()) kind = Kind.READINGS;
            else if (fields.size() == 1 && isJunction(fields.get(0))) kind = Kind.JUNCTION;
        }
        return new Line(bytes, kind, fields, plan, List.of(), Optional.empty(), Front.of(text));
    }

    private static final Front WHOLE = new Front("", Optional.empty());

    /** Readings that are known to be no link's first. */
    static Line ofReadings(int bytes, List<Field> fields, Plan plan) {
        Kind kind = plan.readings().isEmpty() ? Kind.NOTHING : Kind.READINGS;
        return new Line(bytes, kind, fields, plan, List.of(), Optional.empty(), WHOLE);
    }

    /** A line that another grammar has read and that needs no neighbour; without signals it is unreadable. */
    static Line saying(String text, int bytes, List<Signal> signals) {
        Kind kind = signals.isEmpty() ? Kind.NOTHING : Kind.SIGNALS;
        return new Line(bytes, kind, List.of(), Plan.NOTHING, signals, Optional.empty(), Front.of(text));
    }

    private static boolean isJunction(Field field) {
        return field.label().meaning() == Label.Meaning.JUNCTION
                && field.number().isPresent();
    }

    /** A later line of the same shape. Its front is this one's: who asks for it has seen both whole. */
    Line withFields(int itsBytes, List<Field> values) {
        return new Line(itsBytes, kind, values, plan, signals, header, front);
    }

    boolean isJson() {
        return front.skeleton().startsWith("{");
    }

    /** Whether this line, which may have lost its front, is of the same kind as the next and close to it. */
    boolean continuedBy(Line next) {
        return front.skeleton().equals(next.front.skeleton())
                && front.firstNumber().isPresent()
                && next.front.firstNumber().isPresent()
                && front.firstNumber()
                        .get()
                        .continuedBy(next.front.firstNumber().get());
    }
}
