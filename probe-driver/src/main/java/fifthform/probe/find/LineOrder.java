package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.Arrival;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which setting of the line to try next: the usual ones first, then those that the garbled bytes speak for. Garbage without
 * structure means that the sender is faster, and then the fastest usual speed comes next, since from there every other one
 * can be told ({@link Garbling}).
 */
final class LineOrder {
    /** Usual speeds of small instruments and boards, the most usual first (common practice, no source). */
    private static final List<Integer> USUAL_BAUDS = List.of(9600, 115_200, 57_600, 38_400, 19_200, 4800, 2400, 1200);

    private static final int TELLS_ALL_OTHERS = 115_200;

    /** As strong as three bytes that fit. */
    private static final double FASTER = 5;

    private static final double RANK = 0.05;
    /** More than any evidence: what has been tried fairly comes after everything else. */
    private static final double VISITED = 25;

    private static final double MOST_EVIDENCE = 20;

    private final List<LineSettings> lines;
    private final List<LineTrial> trials = new ArrayList<>();
    private final Bursts bursts = new Bursts();
    private final Map<LineSettings, Integer> visits = new HashMap<>();

    LineOrder(List<ProbeProtocol> protocols) {
        Set<LineSettings> all = new LinkedHashSet<>();
        int longest = protocols.stream().mapToInt(p -> p.lines().size()).max().orElse(0);
        for (int rank = 0; rank < longest; rank++)
            for (ProbeProtocol p : protocols)
                if (rank < p.lines().size()) all.add(p.lines().get(rank));
        USUAL_BAUDS.forEach(baud -> all.add(new LineSettings(baud)));
        List<LineSettings> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt(LineOrder::usualRank)); // stable: the protocols' own order stays
        this.lines = List.copyOf(sorted);
    }

    /** The two most usual come before what a single protocol prefers. */
    private static int usualRank(LineSettings line) {
        int rank = line.equals(new LineSettings(line.baud())) ? USUAL_BAUDS.indexOf(line.baud()) : -1;
        return rank == 0 || rank == 1 ? rank : 2;
    }

    LineSettings next() {
        double strongest = lines.stream().mapToDouble(this::evidence).max().orElse(0);
        return lines.stream()
                .max(Comparator.comparingDouble(line -> score(line, strongest)))
                .orElseThrow();
    }

    /** How much patience the next visit deserves. */
    int patience(LineSettings line) {
        boolean expected = structure(line) >= LineTrial.STRONG_EVIDENCE;
        return visits.getOrDefault(line, 0) + (expected ? 1 : 0);
    }

    void begun(LineTrial trial) {
        trials.add(trial);
        visits.merge(trial.line(), 1, Integer::sum);
    }

    boolean hasHeardAnything() {
        return timesHeard() > 0;
    }

    /** How many times something came, at whatever speed it was heard. */
    int timesHeard() {
        return bursts.count();
    }

    void heard(Arrival arrival) {
        bursts.heard(arrival);
    }

    /** How often something comes, at whatever speed it was heard. */
    Optional<Duration> interval() {
        return bursts.interval();
    }

    /** The strongest evidence that this trial heard for a slower speed. */
    double strongestSlower(LineTrial trial) {
        return lines.stream()
                .mapToDouble(line -> trial.evidenceFor(line.baud()))
                .max()
                .orElse(0);
    }

    private double score(LineSettings line, double strongest) {
        double evidence = Math.max(-MOST_EVIDENCE, evidence(line) - strongest);
        return evidence - VISITED * fairVisits(line) - RANK * lines.indexOf(line);
    }

    /** A visit does not count if nothing spoke for the line then and much does now: it was left too early. */
    private long fairVisits(LineSettings line) {
        boolean expected = structure(line) >= LineTrial.STRONG_EVIDENCE;
        return trials.stream()
                .filter(trial -> trial.line().equals(line))
                .filter(trial -> trial.patience() > 0 || !expected)
                .count();
    }

    private double evidence(LineSettings line) {
        return trials.stream().mapToDouble(trial -> evidence(trial, line)).sum();
    }

    private double structure(LineSettings line) {
        return trials.stream()
                .filter(trial -> trial.line().baud() > line.baud())
                .mapToDouble(trial -> trial.evidenceFor(line.baud()))
                .sum();
    }

    private double evidence(LineTrial trial, LineSettings line) {
        boolean heard = trial.bursts().count() > 0;
        if (!heard || trial.line().baud() == line.baud()) return 0;
        if (trial.line().baud() > line.baud()) return trial.evidenceFor(line.baud());
        boolean garbage = strongestSlower(trial) < LineTrial.STRONG_EVIDENCE / 2;
        if (!garbage) return 0;
        return line.baud() == TELLS_ALL_OTHERS ? FASTER + 1 : FASTER;
    }
}
