package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.Arrival;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every protocol listening at one setting of the line, until one is sure or it is not worth staying. */
final class LineTrial {
    /** Natural logarithm: e⁶ is 400 to 1. */
    static final double STRONG_EVIDENCE = 6;

    /** A rival that has not made up its mind is waited for until the other has so many in a row. */
    private static final int READINGS_WHATEVER_RIVALS = 5;

    private static final int BURSTS_OF_TEXT = 9;
    private static final int BURSTS_MORE = 2;
    /** Fewer bytes may be the end of something that began before we listened. */
    private static final int BYTES_TO_JUDGE = 3;

    private static final Duration SILENCE = Duration.ofMillis(2500);

    /** How it stands after an arrival. */
    enum Verdict {
        STAY,
        LEAVE,
        DECIDED,
        CONTRADICTED
    }

    private final LineSettings line;
    private final List<Ear> ears;
    private final Map<ProbeProtocol, Integer> breadth;
    private final Garbling garbling;
    private final Bursts bursts = new Bursts();
    private final int patience;
    private Optional<Instant> begun = Optional.empty();
    private Instant now = Instant.MIN;

    /** @param patience 0 for the first visit at a speed that nothing speaks for, more for those after it */
    LineTrial(LineSettings line, Map<ProbeProtocol, Integer> breadth, int patience) {
        this.line = line;
        this.ears = breadth.keySet().stream()
                .map(protocol -> new Ear(protocol, line))
                .toList();
        this.breadth = breadth;
        this.garbling = new Garbling(line.baud());
        this.patience = patience;
    }

    int patience() {
        return patience;
    }

    LineSettings line() {
        return line;
    }

    /**
     * As {@link Garbling#evidenceFor}. A receiver that is too fast hears more bytes than were sent, and no reading is one
     * byte long: where a single byte comes at a time, the sender is faster.
     */
    double evidenceFor(int baud) {
        boolean tooFew = garbling.size() < Math.max(BYTES_TO_JUDGE, 2 * bursts.count());
        return tooFew ? 0 : garbling.evidenceFor(baud);
    }

    Bursts bursts() {
        return bursts;
    }

    void hear(Arrival arrival) {
        now = arrival.at();
        if (begun.isEmpty()) begun = Optional.of(now);
        bursts.heard(arrival);
        garbling.hear(arrival);
        ears.forEach(ear -> ear.hear(arrival.bytes(), now));
    }

    /** @param slower the strongest evidence for a slower speed, see {@link Garbling#evidenceFor} */
    Verdict verdict(double slower, Optional<Duration> interval, LineOrder order) {
        if (best().isPresent()) {
            Verdict verdict = rivals(best().get());
            if (verdict != Verdict.STAY || bursts.count() < BURSTS_OF_TEXT) return verdict;
        }
        if (bursts.count() == 0) return silence(interval, order);
        if (hasMuchOfIt()) return Verdict.STAY;
        if (slower >= STRONG_EVIDENCE * (1 + 2 * patience)) return Verdict.LEAVE;
        boolean promising =
                garbling.looksLikeLines(bursts.count()) || ears.stream().anyMatch(Ear::understoodSomething);
        int atFirst = garbling.size() >= BYTES_TO_JUDGE ? 1 : 2;
        int enough = promising ? BURSTS_OF_TEXT : atFirst + BURSTS_MORE * patience;
        return bursts.ended(now) >= enough ? Verdict.LEAVE : Verdict.STAY;
    }

    /** Somebody has understood more than the half, and enough to be no chance: noise will not last for ever. */
    private boolean hasMuchOfIt() {
        return ears.stream()
                .map(Ear::evidence)
                .anyMatch(e -> e.readings() >= Evidence.ENOUGH_READINGS && e.explainedFraction() >= 0.5);
    }

    private Verdict silence(Optional<Duration> interval, LineOrder order) {
        if (!order.hasHeardAnything()) return Verdict.STAY; // silent at every speed: no reason to try another
        Duration limit = interval.map(each -> each.multipliedBy(5).dividedBy(2))
                .filter(two -> two.compareTo(SILENCE) > 0)
                .orElse(SILENCE);
        return Duration.between(begun.orElse(now), now).compareTo(limit) > 0 ? Verdict.LEAVE : Verdict.STAY;
    }

    private Verdict rivals(Ear best) {
        boolean late = best.evidence().smoothRun() >= READINGS_WHATEVER_RIVALS;
        if (contradicting(best).isPresent()) return late ? Verdict.CONTRADICTED : Verdict.STAY;
        boolean waiting = ears.stream().anyMatch(ear -> ear != best && ear.isWaiting());
        return waiting && !late ? Verdict.STAY : Verdict.DECIDED;
    }

    /**
     * The convincing one that tells more, or else knows more, or else understood more; a line that only ever says one byte
     * convinces of nothing.
     */
    Optional<Ear> best() {
        if (garbling.isMonotonous()) return Optional.empty();
        return ears.stream()
                .filter(Ear::isConvincing)
                .max(Comparator.comparingLong(Ear::tellingMore)
                        .thenComparing(ear -> -breadth.get(ear.protocol()))
                        .thenComparing(ear -> ear.evidence().confidence()));
    }

    /** A convincing one that reads other temperatures. */
    Optional<Ear> contradicting(Ear best) {
        return ears.stream()
                .filter(ear -> ear != best && ear.isConvincing() && !ear.agreesWith(best))
                .findFirst();
    }

    /** Everyone who listened, with the reason why not, where it was not this one that was taken. */
    List<Candidate> candidates(Optional<Ear> taken) {
        return ears.stream().map(ear -> ear.candidate(rejection(ear, taken))).toList();
    }

    private Optional<String> rejection(Ear ear, Optional<Ear> taken) {
        if (taken.filter(ear::equals).isPresent()) return Optional.empty();
        Optional<String> alone = ear.evidence().rejection();
        if (alone.isPresent()) return alone;
        if (garbling.isMonotonous()) return Optional.of("every byte is the same: a dead line, or the wrong speed");
        return Optional.of(taken.map(other -> ear.agreesWith(other)
                        ? "it reads the same as " + other.protocol().id() + ", which fits more closely"
                        : "it reads other temperatures than " + other.protocol().id())
                .orElse("another understands as much and reads other temperatures"));
    }
}
