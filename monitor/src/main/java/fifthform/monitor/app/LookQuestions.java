package fifthform.monitor.app;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.texts.LooksText;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** A look by questions: a digit answers each, Enter passes it, Q ends without keeping anything. */
final class LookQuestions {
    private static final String QUIT = "q";

    private final BufferedReader in;
    private final PrintWriter out;

    LookQuestions(BufferedReader in, PrintWriter out) {
        this.in = Objects.requireNonNull(in, "in");
        this.out = Objects.requireNonNull(out, "out");
    }

    /** The maker ended the questions. */
    static final class Quit extends Exception {
        private static final long serialVersionUID = 1L;
    }

    /** Asks all there is to ask of bars of this age. */
    BarLook ask(double ageHours) throws Quit, IOException {
        out.println(LooksText.A_DIGIT_ANSWERS_ENTER_PASSES_Q.say());
        List<Bloom> bloom = bloom();
        boolean blooms = !bloom.isEmpty() && !bloom.contains(Bloom.NONE);
        List<BarPlace> places =
                blooms ? several(LooksText.WHERE_IS_IT_SEVERAL.say(), BarPlace.values(), LookWords::of) : List.of();
        Optional<Snap> snap = one(LooksText.HOW_DOES_A_BAR_BREAK_NOT.say(), Snap.values(), LookWords::of);
        Optional<Gloss> gloss = one(LooksText.HOW_DOES_THE_SIDE_FROM_THE.say(), Gloss.values(), LookWords::of);
        Optional<Release> release = one(LooksText.HOW_DID_THEY_LEAVE_THE_MOULD.say(), Release.values(), LookWords::of);
        Optional<Kept> kept = one(LooksText.HOW_WERE_THEY_KEPT.say(), Kept.values(), LookWords::of);
        Optional<Sureness> sure = one(
                LooksText.ARE_YOU_SURE_OF_IT.say(),
                Sureness.values(),
                s -> s == Sureness.SURE ? LooksText.YES_SURE.say() : LooksText.NOT_QUITE_COUNT_IT_FOR_LESS.say());
        return new BarLook(ageHours, bloom, places, snap, gloss, release, kept, sure.orElse(Sureness.SURE));
    }

    /** None and something at once is a slip of the finger. */
    private List<Bloom> bloom() throws Quit, IOException {
        while (true) {
            List<Bloom> bloom = several(LooksText.WHAT_IS_ON_THE_BARS_SEVERAL.say(), Bloom.values(), LookWords::of);
            if (bloom.size() < 2 || !bloom.contains(Bloom.NONE)) return bloom;
            out.println(LooksText.NOTHING_AND_SOMETHING_CANNOT.say());
        }
    }

    private <T extends Enum<T>> Optional<T> one(String question, T[] choices, Function<T, String> words)
            throws Quit, IOException {
        while (true) {
            List<T> chosen = several(question, choices, words);
            if (chosen.size() < 2) return chosen.stream().findFirst();
            out.println(LooksText.ONE_DIGIT_PLEASE.say());
        }
    }

    private <T extends Enum<T>> List<T> several(String question, T[] choices, Function<T, String> words)
            throws Quit, IOException {
        out.println(question);
        for (int i = 0; i < choices.length; i++) out.println("  " + (i + 1) + "  " + words.apply(choices[i]));
        while (true) {
            out.print("> ");
            out.flush();
            String line = in.readLine();
            // The end of the input is nobody's answer.
            if (line == null || line.strip().equalsIgnoreCase(QUIT)) throw new Quit();
            Optional<List<T>> chosen = chosen(line, choices);
            if (chosen.isPresent()) return chosen.get();
            out.println(LooksText.DIGITS_FROM_1_TO_OR_ENTER.say(choices.length));
        }
    }

    private static <T extends Enum<T>> Optional<List<T>> chosen(String line, T[] choices) {
        EnumSet<T> chosen = EnumSet.noneOf(choices[0].getDeclaringClass());
        for (char c : line.replaceAll("[\\s,;]", "").toCharArray()) {
            int number = c - '1';
            if (number < 0 || number >= choices.length) return Optional.empty();
            chosen.add(choices[number]);
        }
        return Optional.of(new ArrayList<>(chosen));
    }
}
