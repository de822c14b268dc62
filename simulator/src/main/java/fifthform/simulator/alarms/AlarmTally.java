package fifthform.simulator.alarms;

import fifthform.curves.alarm.Priority;
import fifthform.curves.input.AlarmId;
import fifthform.simulator.alarms.AlarmFigures.Course;
import fifthform.simulator.bench.Interval;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * The alarms of many batches beside the goals of the design. Intervals are at 95 %: Wilson's score for shares, Student's t
 * over the batches for means.
 */
public final class AlarmTally {
    private static final double LEAD_GOAL_SECONDS = 15;
    private static final int MOST_IN_TEN_MINUTES = 3;

    private final List<AlarmFigures> all;
    private final StringBuilder text = new StringBuilder();

    AlarmTally(List<AlarmFigures> all) {
        this.all = List.copyOf(all);
    }

    /** The batch of each number of the fleet from {@code first} on, counted. */
    public static AlarmTally of(AlarmRun run, List<Long> numbers) {
        return new AlarmTally(numbers.parallelStream().map(run::figures).toList());
    }

    /** Melt-outs that were not told. */
    public long missedMeltOuts() {
        return sum(all, AlarmFigures::missed);
    }

    /** Melt-outs that really were. */
    public long meltOuts() {
        return sum(all, f -> f.meltOuts().size());
    }

    /** Share of the batches in which an alarm chattered. */
    public double chatteringBatchesFraction() {
        return count(all, f -> f.chattering() > 0) / (double) all.size();
    }

    /** Numbers of the batches in which a melt-out was missed. */
    List<Long> missedIn() {
        return all.stream()
                .filter(f -> f.missed() > 0)
                .map(AlarmFigures::number)
                .toList();
    }

    /** Share of all seconds with the right phase. */
    public double phaseRightFraction() {
        return sum(all, AlarmFigures::phaseRight) / (double) sum(all, AlarmFigures::moments);
    }

    /** False warnings of melt-out in an hour of work. */
    public double falseMeltOutsPerHour() {
        return sum(all, AlarmFigures::falseInWork)
                / all.stream().mapToDouble(AlarmFigures::workHours).sum();
    }

    /** A line a measure: what was measured, its goal, what was reached. */
    public String table() {
        text.setLength(0);
        List<AlarmFigures> normal =
                all.stream().filter(f -> f.course() == Course.NORMAL).toList();
        line("batches", "", all.size() + ", normal " + normal.size());
        ears("all", all);
        ears("normal", normal);
        lifts();
        heat();
        split();
        mean("phase right, % of seconds", ">= 90", all, f -> 100.0 * f.phaseRight() / f.moments());
        mean("place right, % of seconds", "-", all, f -> 100.0 * f.placeRight() / f.moments());
        return text.toString();
    }

    private void ears(String which, List<AlarmFigures> of) {
        mean("annunciations in 10 min, " + which, "<= 1", of, f -> f.raised() / (6 * f.hours()));
        share(
                "more than 3 in any 10 min, " + which,
                "0",
                count(of, f -> f.mostInTenMinutes() > MOST_IN_TEN_MINUTES),
                of.size());
        share("batches with chatter, " + which, "0", count(of, f -> f.chattering() > 0), of.size());
        share("fleeting of raised, " + which, "<= 5 %", sum(of, AlarmFigures::fleeting), sum(of, AlarmFigures::raised));
        share("batches with one standing > 10 min, " + which, "0 normal", count(of, f -> f.standing() > 0), of.size());
    }

    private void lifts() {
        List<Double> leads = all.stream().flatMap(f -> f.leadSeconds().stream()).toList();
        long enough = leads.stream().filter(s -> s >= LEAD_GOAL_SECONDS).count();
        share("lift-now 15 s or more before the range is passed", ">= 95 %", enough, leads.size());
        mean(
                "lift-now off the bath or far too soon, in 10 batches",
                "<= 1",
                all,
                f -> 10.0 * (f.falseLifts() + f.earlyLifts()));
        rate(
                "lift-now off the bath, an hour off it",
                "<= 0.3",
                sum(all, AlarmFigures::falseLifts),
                hours(AlarmFigures::hoursOff));
    }

    private void heat() {
        share("melt-out missed", "0", missedMeltOuts(), meltOuts());
        rate(
                "false melt-out warnings, an hour of work",
                "<= 0.3",
                sum(all, AlarmFigures::falseInWork),
                hours(AlarmFigures::workHours));
        rate(
                "false melt-out warnings, an hour in all",
                "-",
                sum(all, AlarmFigures::falseMeltOuts),
                hours(AlarmFigures::hours));
    }

    private void split() {
        long cues = sum(all, AlarmFigures::cues);
        long urgent = priority(Priority.URGENT);
        long prompt = priority(Priority.PROMPT);
        long advise = priority(Priority.ADVISE);
        double of = Math.max(1, cues + urgent + prompt + advise);
        line(
                "urgent / prompt / advise with cues",
                "5 / 15 / 80 %",
                String.format(
                        Locale.ROOT,
                        "%.1f / %.1f / %.1f %%",
                        100 * urgent / of,
                        100 * prompt / of,
                        100 * (advise + cues) / of));
        for (AlarmId id : AlarmId.values()) {
            rate(
                    "  " + id.word() + ", an hour",
                    "",
                    sum(all, f -> f.byAlarm().getOrDefault(id, 0L)),
                    hours(AlarmFigures::hours));
        }
    }

    private long priority(Priority priority) {
        return sum(all, f -> f.byPriority().getOrDefault(priority, 0L));
    }

    private double hours(ToDoubleFunction<AlarmFigures> of) {
        return all.stream().mapToDouble(of).sum();
    }

    private static long sum(List<AlarmFigures> of, ToLongFunction<AlarmFigures> number) {
        return of.stream().mapToLong(number).sum();
    }

    private static long count(List<AlarmFigures> of, Predicate<AlarmFigures> which) {
        return of.stream().filter(which).count();
    }

    private void share(String name, String goal, long hits, long of) {
        if (of == 0) {
            line(name, goal, "none to count");
            return;
        }
        Interval interval = Interval.ofProportion(hits, of);
        line(
                name,
                goal,
                String.format(
                        Locale.ROOT,
                        "%.2f %% (%d of %d; %.2f to %.2f %%)",
                        100.0 * hits / of,
                        hits,
                        of,
                        100 * interval.low(),
                        100 * interval.high()));
    }

    private void mean(String name, String goal, List<AlarmFigures> of, ToDoubleFunction<AlarmFigures> number) {
        if (of.size() < 2) {
            line(name, goal, "too few to say");
            return;
        }
        double mean = of.stream().mapToDouble(number).average().orElseThrow();
        double variance = of.stream()
                        .mapToDouble(number)
                        .map(x -> (x - mean) * (x - mean))
                        .sum()
                / (of.size() - 1);
        Interval interval = Interval.ofMean(of.size(), mean, Math.sqrt(variance));
        line(name, goal, String.format(Locale.ROOT, "%.3f (%.3f to %.3f)", mean, interval.low(), interval.high()));
    }

    /** Rare events: the count's own square root is its standard deviation (Poisson). */
    private void rate(String name, String goal, long events, double hours) {
        if (hours <= 0) {
            line(name, goal, "none to count");
            return;
        }
        double half = 1.96 * Math.sqrt(events);
        line(
                name,
                goal,
                String.format(
                        Locale.ROOT,
                        "%.3f (%d in %.0f h; %.3f to %.3f)",
                        events / hours,
                        events,
                        hours,
                        Math.max(0, events - half) / hours,
                        (events + half) / hours));
    }

    private void line(String name, String goal, String reached) {
        text.append(String.format(Locale.ROOT, "%-52s %-14s %s", name, goal, reached))
                .append('\n');
    }
}
