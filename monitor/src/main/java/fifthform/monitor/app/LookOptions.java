package fifthform.monitor.app;

import fifthform.curves.check.Nearest;
import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
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
    @Option(
            names = "--bloom",
            paramLabel = "KIND",
            split = ",",
            description = "none; veil (grey or white), streaks, blotches, sugar (rough, does not melt under a finger),"
                    + " oily (spots or rings), fuzzy (something grows); several with commas")
    private List<String> bloom = new ArrayList<>();

    @Option(
            names = "--place",
            paramLabel = "WHERE",
            split = ",",
            description =
                    "all-over, thick-part, edges, mould-side, open-side, over-pieces, few-bars; several with commas")
    private List<String> places = new ArrayList<>();

    @Option(names = "--snap", paramLabel = "HOW", description = "clean, soft, bends; at 18 to 21 °C, not cold")
    private String snap;

    @Option(names = "--gloss", paramLabel = "HOW", description = "bright, satin, dull; of the side from the mould")
    private String gloss;

    @Option(names = "--release", paramLabel = "HOW", description = "by-itself, tapped, some-stuck, stuck")
    private String release;

    @Option(names = "--kept", paramLabel = "HOW", description = "cool (15 to 20 °C), fridge, warm, swings")
    private String kept;

    @Option(names = "--unsure", description = "I am not sure of what I saw; it then counts for less")
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
            throw refused("--bloom says none, and something as well.", "Say one or the other.");
        }
        if (!where.isEmpty() && (kinds.isEmpty() || kinds.contains(Bloom.NONE))) {
            throw refused("--place says where, but no bloom was named.", "Name it too, for example: --bloom streaks");
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
            throw refused("Nothing was said of the bars themselves.", "Say at least: --bloom none");
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
        String meant = Nearest.to(plain, known)
                .map(near -> "Did you mean \"" + near + "\"? ")
                .orElse("");
        throw refused(option + " was \"" + said + "\".", meant + "Say one of: " + String.join(", ", known) + ".");
    }

    private static Refusal refused(String what, String whatToDo) {
        return new Refusal(Exit.NOT_UNDERSTOOD, what + " Nothing was kept. " + whatToDo);
    }
}
