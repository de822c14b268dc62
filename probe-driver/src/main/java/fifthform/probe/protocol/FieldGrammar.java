package fifthform.probe.protocol;

import fifthform.probe.protocol.Tokens.Kind;
import fifthform.probe.protocol.Tokens.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code line = field { separator field }}, {@code field = [label (":" | "=")] value [unit]}; the mark may be missing behind
 * a label that means a temperature. All of the line must fit.
 */
final class FieldGrammar {
    private static final Token END = new Token(Kind.BETWEEN, "", false, 0);

    private final String text;
    private final List<Token> tokens;
    private int next;

    private FieldGrammar(String text, List<Token> tokens) {
        this.text = text;
        this.tokens = tokens;
    }

    static Optional<List<Field>> read(String text) {
        return Tokens.of(text).flatMap(tokens -> new FieldGrammar(text, tokens).fields());
    }

    private Optional<List<Field>> fields() {
        List<Field> fields = new ArrayList<>();
        while (next < tokens.size()) {
            Optional<Field> field = field();
            if (field.isEmpty()) return Optional.empty();
            fields.add(field.get());
            if (peek(0).kind() == Kind.BETWEEN) next++;
        }
        return Optional.of(fields);
    }

    private Optional<Field> field() {
        Optional<Label> label = label();
        if (label.isEmpty() || next >= tokens.size()) return Optional.empty();
        Token value = tokens.get(next++);
        boolean absent = value.kind() == Kind.NAN
                || value.kind() == Kind.WORD && value.text().equalsIgnoreCase("open");
        Optional<Written> number = value.kind() == Kind.NUMBER ? Written.of(value.text()) : Optional.empty();
        if (number.isEmpty() && !absent) return Optional.empty();
        return Optional.of(new Field(label.get(), number, unit(), Field.runsBefore(text, value.start())));
    }

    private Optional<Label> label() {
        if (peek(0).kind() == Kind.NUMBER && peek(1).kind() == Kind.IS) return index();
        StringBuilder words = new StringBuilder();
        while (peek(0).kind() == Kind.WORD)
            words.append(tokens.get(next++).text()).append(' ');
        Label label = Label.of(words.toString());
        if (peek(0).kind() == Kind.IS) {
            next++;
            return words.isEmpty() ? Optional.empty() : Optional.of(label);
        }
        boolean speaksForItself =
                words.isEmpty() || label.meaning() == Label.Meaning.TIP || label.meaning() == Label.Meaning.JUNCTION;
        return speaksForItself ? Optional.of(label) : Optional.empty();
    }

    /** {@code 0: 31.25}; the space tells it from a time of day. */
    private Optional<Label> index() {
        String digits = tokens.get(next).text();
        if (!Label.isChannel(digits) || !peek(2).spaced()) return Optional.empty();
        next += 2;
        return Optional.of(Label.channel(Integer.parseInt(digits)));
    }

    private Unit unit() {
        if (peek(0).kind() == Kind.PERCENT) {
            next++;
            return Unit.FOREIGN;
        }
        boolean degree = peek(0).kind() == Kind.DEGREE || peek(0).text().equalsIgnoreCase("deg");
        if (degree) next++;
        if (peek(0).kind() != Kind.WORD || beginsNextLabel()) return degree ? Unit.CELSIUS : Unit.UNSAID;
        return Unit.ofTemperature(tokens.get(next++).text()).orElse(Unit.FOREIGN);
    }

    /** A word behind a number begins the next label if it is marked as one or means a temperature and is no unit. */
    private boolean beginsNextLabel() {
        Token word = peek(0);
        if (!word.spaced()) return false;
        if (peek(1).kind() == Kind.IS) return true;
        Label.Meaning meaning = Label.of(word.text()).meaning();
        boolean temperature = meaning == Label.Meaning.TIP || meaning == Label.Meaning.JUNCTION;
        return temperature && Unit.ofTemperature(word.text()).isEmpty();
    }

    private Token peek(int ahead) {
        return next + ahead < tokens.size() ? tokens.get(next + ahead) : END;
    }
}
