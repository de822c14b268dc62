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
 * @param skeleton the text with every number replaced: lines of one kind have equal skeletons
 * @param firstNumber the only number that a torn beginning can spoil
 * @param signals what the line says, if it needs no neighbour; empty and no columns: unreadable
 * @param columns bare numbers, whose meaning only following lines can tell
 */
record Line(int bytes, String skeleton, Optional<Written> firstNumber, List<Signal> signals, List<Field> columns) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");
    private static final Predicate<String> HAS_DIGIT = Pattern.compile("\\d").asPredicate();

    static Line of(int bytes, String text) {
        Optional<Written> first = NUMBER.matcher(text)
                .results()
                .findFirst()
                .map(MatchResult::group)
                .flatMap(Written::of);
        String skeleton = NUMBER.matcher(text).replaceAll("#").replaceAll("\\s+", " ");
        if (text.startsWith("{")) return labelled(bytes, skeleton, first, JsonFields.read(text));
        Optional<List<Field>> fields = FieldGrammar.read(text);
        if (fields.filter(list -> list.stream().allMatch(Field::isBare)).isPresent())
            return new Line(bytes, skeleton, first, List.of(), fields.get());
        Line line = labelled(bytes, skeleton, first, fields);
        Optional<Signal> fault = HAS_DIGIT.test(text) ? Optional.empty() : FaultWords.read(text);
        boolean faultOnly = line.signals().isEmpty() && fault.isPresent();
        return faultOnly ? new Line(bytes, skeleton, first, List.of(fault.get()), List.of()) : line;
    }

    private static Line labelled(int bytes, String skeleton, Optional<Written> first, Optional<List<Field>> fields) {
        List<Signal> signals = fields.flatMap(Temperatures::labelled).orElse(List.of());
        return new Line(bytes, skeleton, first, signals, List.of());
    }

    boolean isUnreadable() {
        return signals.isEmpty() && columns.isEmpty();
    }

    /** Whether this line, which may have lost its front, is of the same kind as the next and close to it. */
    boolean continuedBy(Line next) {
        return skeleton.equals(next.skeleton)
                && firstNumber.isPresent()
                && next.firstNumber.isPresent()
                && firstNumber.get().continuedBy(next.firstNumber.get());
    }
}
