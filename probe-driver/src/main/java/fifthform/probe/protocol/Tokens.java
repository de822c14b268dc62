package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line cut into numbers, words and marks. What does not fit makes the whole line unreadable: no number is guessed. */
final class Tokens {
    enum Kind {
        NUMBER,
        NAN,
        WORD,
        DEGREE,
        /** {@code :} or {@code =}. */
        IS,
        PERCENT,
        BETWEEN
    }

    /**
     * @param spaced white space stands before it
     * @param start where it begins in the line
     */
    record Token(Kind kind, String text, boolean spaced, int start) {}

    private static final Pattern TOKEN = Pattern.compile("(?<space>\\s*)(?:"
            + "(?<NAN>[+-]?[nN][aA][nN](?![\\w]))"
            + "|(?<NUMBER>[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3}(?!\\w))?)"
            + "|(?<WORD>[A-Za-z_]\\w*)"
            + "|(?<DEGREE>°)|(?<IS>[:=])|(?<PERCENT>%)|(?<BETWEEN>[,;/|]))");

    private Tokens() {}

    static Optional<List<Token>> of(String text) {
        List<Token> tokens = new ArrayList<>();
        Matcher m = TOKEN.matcher(text);
        int end = 0;
        while (end < text.length()) {
            if (!m.find() || m.start() != end) return Optional.empty();
            Kind kind = kindOf(m);
            boolean spaced = !m.group("space").isEmpty();
            Kind before = tokens.isEmpty()
                    ? Kind.BETWEEN
                    : tokens.get(tokens.size() - 1).kind();
            if (!spaced && runsInto(before, kind)) return Optional.empty();
            tokens.add(new Token(kind, m.group(kind.name()), spaced, m.start(kind.name())));
            end = m.end();
        }
        return Optional.of(tokens);
    }

    private static Kind kindOf(Matcher m) {
        for (Kind kind : Kind.values()) if (m.group(kind.name()) != null) return kind;
        throw new IllegalStateException("the pattern matched without any of its kinds");
    }

    /** A number right behind a word or a number: {@code v1.31}, {@code 31.2531.50}, {@code C31.50}. */
    private static boolean runsInto(Kind before, Kind kind) {
        boolean value = kind == Kind.NUMBER || kind == Kind.NAN;
        return value && before != Kind.IS && before != Kind.BETWEEN;
    }
}
