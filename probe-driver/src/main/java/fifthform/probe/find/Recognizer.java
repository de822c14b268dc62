package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.ProbeProtocol.Manner;
import fifthform.probe.find.LineTrial.Verdict;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.TunableLink;
import fifthform.probe.link.TunableSource;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Finds out how an adapter talks: by listening with every protocol at every usual speed, and by asking where the maker
 * allows it. The port is opened once only, since many boards restart when it is opened.
 *
 * <p>It decides after {@value Evidence#ENOUGH_READINGS} smooth readings in a row, or says why it cannot. Time is the
 * link's own.
 */
public final class Recognizer {
    /** What is promised: five seconds, and six times the interval at which the adapter speaks. */
    private static final Duration FIXED = Duration.ofSeconds(5);
    /** The last read may begin before time is over and end after it; and intervals are known to some per cent only. */
    private static final Duration RESERVE = Duration.ofMillis(400);

    private static final int INTERVALS = 6;
    private static final Duration UNKNOWN_INTERVAL = Duration.ofSeconds(1);
    /** Slower adapters are of no use at a bowl. */
    private static final Duration LONGEST_INTERVAL = Duration.ofSeconds(5);
    /** An adapter that may be asked and has said nothing for so long is asked. */
    private static final Duration SILENCE_BEFORE_ASKING = Duration.ofMillis(2200);

    private final TunableSource port;
    private final Map<ProbeProtocol, Integer> speaking = new LinkedHashMap<>();
    private final Questions questions;
    private final LineOrder order;
    private final Map<String, Candidate> candidates = new LinkedHashMap<>();
    private Optional<Instant> begun = Optional.empty();
    private Instant now = Instant.MIN;

    /** For one recognition. */
    public Recognizer(TunableSource port, List<ProbeProtocol> protocols, Asking asking) {
        this.port = Objects.requireNonNull(port, "port");
        List<ProbeProtocol> speakers =
                protocols.stream().filter(p -> p.manner() == Manner.SPEAKS).toList();
        speakers.forEach(p -> speaking.put(p, Breadth.of(p)));
        this.order = new LineOrder(speakers);
        this.questions = asking == Asking.ALLOWED ? Questions.of(protocols) : Questions.NONE;
    }

    /** @throws LinkException the port cannot be opened or has gone */
    public Recognition recognize() throws LinkException, InterruptedException {
        try (TunableLink link = port.open()) {
            Recognition heard = listen(link);
            boolean silent = !order.hasHeardAnything();
            return silent && !questions.isEmpty() ? ask(link) : heard;
        }
    }

    private Recognition listen(TunableLink link) throws LinkException, InterruptedException {
        while (true) {
            LineSettings line = order.next();
            LineTrial trial = new LineTrial(line, speaking, order.patience(line));
            order.begun(trial);
            link.tune(line);
            Verdict verdict = Verdict.STAY;
            while (verdict == Verdict.STAY) {
                Optional<Arrival> arrival = link.read();
                if (arrival.isEmpty()) return undecided(trial, "The recording ended before anything could be decided.");
                pass(arrival.get().at());
                order.heard(arrival.get());
                trial.hear(arrival.get());
                verdict = trial.verdict(order.strongestSlower(trial), order.interval(), order);
                if (verdict == Verdict.STAY && isOver()) return outOfTime(trial);
            }
            if (verdict == Verdict.DECIDED) return decided(trial);
            if (verdict == Verdict.CONTRADICTED) return contradicted(trial);
            keep(trial.candidates(Optional.empty()));
        }
    }

    private Recognition ask(TunableLink link) throws LinkException, InterruptedException {
        Optional<Ear> answered = questions.ask(link, this::pass);
        keep(questions.candidates());
        if (answered.isEmpty()) {
            return done(
                    Optional.empty(),
                    Reasons.silent(took()) + " It was asked in " + questions.count() + " ways and did not answer.");
        }
        return done(Optional.of(answered.get().decision()), Reasons.decided(answered.get()));
    }

    private void pass(Instant at) {
        if (begun.isEmpty()) begun = Optional.of(at);
        now = at;
    }

    private Duration took() {
        return begun.map(start -> Duration.between(start, now)).orElse(Duration.ZERO);
    }

    private boolean isOver() {
        boolean mayAsk = !questions.isEmpty() && !order.hasHeardAnything();
        Duration interval = order.interval().orElse(UNKNOWN_INTERVAL);
        Duration bounded = interval.compareTo(LONGEST_INTERVAL) < 0 ? interval : LONGEST_INTERVAL;
        Duration limit = mayAsk ? SILENCE_BEFORE_ASKING : FIXED.minus(RESERVE).plus(bounded.multipliedBy(INTERVALS));
        return took().compareTo(limit) >= 0;
    }

    private Recognition decided(LineTrial trial) {
        Ear best = trial.best().orElseThrow();
        keep(trial.candidates(Optional.of(best)));
        return done(Optional.of(best.decision()), Reasons.decided(best));
    }

    private Recognition contradicted(LineTrial trial) {
        Ear best = trial.best().orElseThrow();
        return undecided(
                trial, Reasons.contradicted(best, trial.contradicting(best).orElseThrow()));
    }

    private Recognition outOfTime(LineTrial trial) {
        if (!order.hasHeardAnything()) return undecided(trial, Reasons.silent(took()));
        Optional<Ear> best = trial.best();
        Optional<Ear> rival = best.flatMap(trial::contradicting);
        if (rival.isPresent()) return contradicted(trial);
        if (best.isPresent()) return decided(trial);
        keep(trial.candidates(Optional.empty()));
        if (order.timesHeard() <= Evidence.ENOUGH_READINGS)
            return done(Optional.empty(), Reasons.tooSeldom(took(), order.timesHeard()));
        return done(Optional.empty(), Reasons.notUnderstood(took(), ranked()));
    }

    private Recognition undecided(LineTrial trial, String reason) {
        keep(trial.candidates(Optional.empty()));
        return done(Optional.empty(), reason);
    }

    private void keep(List<Candidate> more) {
        more.forEach(c -> candidates.put(c.protocol().id() + " " + c.line(), c)); // a later visit counts
    }

    private List<Candidate> ranked() {
        return Reasons.ranked(candidates.values());
    }

    private Recognition done(Optional<Decision> decision, String reason) {
        return new Recognition(decision, reason, ranked(), took());
    }
}
