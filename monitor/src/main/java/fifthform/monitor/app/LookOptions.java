package fifthform.monitor.app;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.LooksText;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What was seen, in options. */
final class LookOptions {
    @Option(names = "--bloom", paramLabel = "KIND", split = ",")
    private List<String> bloom = new ArrayList<>();

    @Option(names = "--place", paramLabel = "WHERE", split = ",")
    private List<String> places = new ArrayList<>();

    @Option(names = "--snap", paramLabel = "HOW")
    private String snap;

    @Option(names = "--gloss", paramLabel = "HOW")
    private String gloss;

    @Option(names = "--release", paramLabel = "HOW")
    private String release;

    @Option(names = "--kept", paramLabel = "HOW")
    private String kept;

    @Option(names = "--unsure")
    private boolean unsure;

    /** Whether anything was said by options. */
    boolean isSaid() {
        return !bloom.isEmpty()
                || !places.isEmpty()
                || Stream.of(snap, gloss, release, kept).anyMatch(word -> word != null)
                || unsure;
    }

    /** The look at bars of this age. */
    BarLook look(double ageHours) throws Refusal {
        List<Bloom> kinds = all("--bloom", bloom, Bloom.values(), Bloom::word);
        List<BarPlace> where = all("--place", places, BarPlace.values(), BarPlace::word);
        if (kinds.size() > 1 && kinds.contains(Bloom.NONE)) {
            throw refused(LooksText.BLOOM_SAYS_NONE_AND_SOMETHING.say(), LooksText.SAY_ONE_OR_THE_OTHER.say());
        }
        if (!where.isEmpty() && (kinds.isEmpty() || kinds.contains(Bloom.NONE))) {
            throw refused(LooksText.PLACE_SAYS_WHERE_BUT_NO_BLOOM.say(), LooksText.NAME_IT_TOO_FOR_EXAMPLE_BLOOM.say());
        }
        BarLook look = new BarLook(
                ageHours,
                kinds,
                where,
                one("--snap", snap, Snap.values(), Snap::word),
                one("--gloss", gloss, Gloss.values(), Gloss::word),
                one("--release", release, Release.values(), Release::word),
                one("--kept", kept, Kept.values(), Kept::word),
                unsure ? Sureness.UNSURE : Sureness.SURE);
        if (look.saysNothing()) {
            throw refused(
                    LooksText.NOTHING_WAS_SAID_OF_THE_BARS_LOOK_OPTIONS.say(), LooksText.SAY_AT_LEAST_BLOOM_NONE.say());
        }
        return look;
    }

    private static <T extends Enum<T>> List<T> all(
            String option, List<String> words, T[] choices, Function<T, String> word) throws Refusal {
        Set<T> found = EnumSet.noneOf(choices[0].getDeclaringClass());
        for (String said : words) one(option, said, choices, word).ifPresent(found::add);
        return List.copyOf(found);
    }

    private static <T> Optional<T> one(String option, String said, T[] choices, Function<T, String> word)
            throws Refusal {
        if (said == null) return Optional.empty();
        String plain = said.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
        for (T choice : choices) if (word.apply(choice).equals(plain)) return Optional.of(choice);
        List<String> known = Stream.of(choices).map(word).toList();
        String meant = DidYouMean.oneOf(known, plain);
        throw refused(LooksText.WAS.say(option, said), LooksText.SAY_ONE_OF.say(meant, String.join(", ", known)));
    }

    private static Refusal refused(String what, String whatToDo) {
        return new Refusal(Exit.NOT_UNDERSTOOD, LooksText.NOTHING_WAS_KEPT_LOOK_OPTIONS.say(what, whatToDo));
    }
}
