package fifthform.probe.find;

import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Why a recognition ended as it did, in words for the maker. */
final class Reasons {
    private static final String NAME_IT = "Name how it talks with --talk, for example --talk text-lines:baud=9600.";

    private Reasons() {}

    static String decided(Ear taken) {
        Candidate c = taken.candidate(Optional.empty());
        return String.format(
                Locale.ROOT,
                "%s at %s: %d readings, %.0f %% of the bytes understood.",
                c.protocol().id(),
                c.line(),
                c.evidence().readings(),
                100 * c.evidence().explainedFraction());
    }

    static String silent(Duration took) {
        return "Nothing came in " + took.toSeconds()
                + " s. Nothing can be said of it. It may be switched off, or speak only when it is asked; asking must be allowed.";
    }

    /** Nothing is wrong with what came; it is only not enough. */
    static String tooSeldom(Duration took, int times) {
        return "Only " + (times == 1 ? "once" : times + " times") + " something came in " + took.toSeconds()
                + " s, too seldom to find out how it talks. No reading can be taken. " + NAME_IT;
    }

    static String contradicted(Ear one, Ear other) {
        return String.format(
                Locale.ROOT,
                "Two protocols understand it and read different temperatures: %s reads %s, %s reads %s. Neither is taken,"
                        + " since one of them is wrong. Look up which converter is on the adapter and name it with --talk.",
                one.protocol().id(),
                celsius(one),
                other.protocol().id(),
                celsius(other));
    }

    private static String celsius(Ear ear) {
        List<ChannelHeard> channels = ear.evidence().channels();
        return channels.isEmpty()
                ? "nothing"
                : String.format(Locale.ROOT, "%.2f °C", channels.get(0).lastCelsius());
    }

    static String notUnderstood(Duration took, List<Candidate> ranked) {
        String best = ranked.stream()
                .filter(c -> c.evidence().readings() + c.evidence().faults() > 0)
                .findFirst()
                .map(c -> " The nearest was " + c.protocol().id() + " at " + c.line() + ", but "
                        + c.rejection().orElse("time was over") + ".")
                .orElse("");
        return "Bytes came for " + took.toSeconds() + " s, but no protocol understands them well enough at any speed."
                + best + " No reading can be taken. " + NAME_IT;
    }

    static List<Candidate> ranked(Collection<Candidate> candidates) {
        return candidates.stream()
                .sorted(Comparator.comparing((Candidate c) -> c.rejection().isPresent())
                        .thenComparing(
                                c -> -c.evidence().readings() * c.evidence().explainedFraction())
                        .thenComparing(c -> -c.evidence().faults())
                        .thenComparing(c -> c.evidence().unreadableBytes()))
                .toList();
    }
}
