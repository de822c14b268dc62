package fifthform.curves.review;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.AlarmId;
import fifthform.curves.phase.Melted;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The figures of a batch, counted step by step, so that a live session and a replay count alike.
 *
 * @param readings good readings of the chocolate
 * @param gaps time without one, where it was longer than five seconds
 * @param spans the phases so far; the last one is still going on
 * @param highestWorkCelsius highest temperature in rewarm and work
 * @param lowestCoolCelsius lowest temperature in cool and seed
 * @param overRange time above the working range in rewarm and work, by more than figures to a tenth hide
 * @param cooled whether the cool hold was met, by time or by the crystals
 * @param crystals the last word about the seed, in data's spelling; empty where none was said
 * @param seedLost the first time that heat cost the temper its seed
 * @param firstTrouble the first alarm that needed an act
 */
public record Tally(
        long readings,
        Duration gaps,
        List<PhaseSpan> spans,
        OptionalDouble highestWorkCelsius,
        OptionalDouble lowestCoolCelsius,
        Duration overRange,
        Cooled cooled,
        Optional<String> crystals,
        Optional<Event.SeedLost> seedLost,
        Optional<Trouble> firstTrouble) {
    /** Whether the hold in the cool range was long enough. */
    public enum Cooled {
        NOT_YET,
        LONG_ENOUGH
    }

    private static final Duration GAP = Duration.ofSeconds(5);

    /** What is shown to a tenth as the end of the range is not over it, K. */
    private static final double SHOWN_AS_HIGH_KELVIN = 0.05;

    /** Advice to come in time is no trouble; what counts is what went wrong. */
    private static final Set<AlarmId> NO_TROUBLE = EnumSet.of(AlarmId.HEADING_UNDER);

    public Tally {
        Objects.requireNonNull(gaps, "gaps");
        spans = List.copyOf(spans);
        Objects.requireNonNull(highestWorkCelsius, "highestWorkCelsius");
        Objects.requireNonNull(lowestCoolCelsius, "lowestCoolCelsius");
        Objects.requireNonNull(overRange, "overRange");
        Objects.requireNonNull(cooled, "cooled");
        Objects.requireNonNull(crystals, "crystals");
        Objects.requireNonNull(seedLost, "seedLost");
        Objects.requireNonNull(firstTrouble, "firstTrouble");
    }

    /** Before the first input. */
    public static Tally start(State start) {
        PhaseSpan first = new PhaseSpan(start.batch().phase(), start.at(), start.at());
        return new Tally(
                0,
                Duration.ZERO,
                List.of(first),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Duration.ZERO,
                // What came in temper was cooled by somebody before.
                start.batch().melted() == Melted.KEPT ? Cooled.LONG_ENOUGH : Cooled.NOT_YET,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The figures after one more step. */
    public Tally with(Recipe recipe, State before, Step step) {
        State after = step.after();
        Optional<Estimate> news = after.estimate()
                .filter(Estimate::isUsable)
                .filter(e -> after.probe() == ProbePlace.IN_THE_CHOCOLATE)
                .filter(e ->
                        before.estimate().filter(b -> b.at().equals(e.at())).isEmpty());
        Duration passed = before.estimate()
                .flatMap(b -> news.map(n -> Duration.between(b.at(), n.at())))
                .orElse(Duration.ZERO);
        boolean gap = passed.compareTo(GAP) > 0;
        return new Tally(
                readings + (news.isPresent() ? 1 : 0),
                gap ? gaps.plus(passed) : gaps,
                spansAfter(after),
                highest(after.batch().phase(), news),
                lowest(after.batch().phase(), news),
                gap ? overRange : overRange.plus(over(recipe, after.batch().phase(), news, passed)),
                cooled == Cooled.LONG_ENOUGH || wasCooled(recipe, after) ? Cooled.LONG_ENOUGH : cooled,
                after.crystals().flatMap(c -> c.watch().spoken().inData()).or(() -> crystals),
                seedLost.or(() -> loss(step.events())),
                firstTrouble.or(() -> trouble(step.events())));
    }

    /** By the recipe's time in the cool range, or by the crystals: colder is quicker. */
    private static boolean wasCooled(Recipe recipe, State after) {
        boolean held = after.batch().phase() == Phase.SEED
                && after.batch().progress().dwell().compareTo(recipe.cool().dwell()) >= 0;
        return held || after.crystals().filter(c -> c.watch().isColdEnough()).isPresent();
    }

    /** How it went so far. */
    public Verdict verdict(Recipe recipe) {
        double highest = highestWorkCelsius.orElse(Double.NEGATIVE_INFINITY);
        if (highest >= recipe.meltOut().limitCelsius()) return Verdict.MELT_OUT;
        if (highest >= recipe.meltOut().warnCelsius()) return Verdict.OVER_RANGE;
        boolean reached = highest >= recipe.work().range().lowCelsius();
        if (!reached) return Verdict.UNFINISHED;
        return cooled == Cooled.LONG_ENOUGH ? Verdict.IN_RANGE : Verdict.NOT_COOLED;
    }

    private List<PhaseSpan> spansAfter(State after) {
        List<PhaseSpan> next = new ArrayList<>(spans);
        PhaseSpan last = next.remove(next.size() - 1);
        next.add(new PhaseSpan(last.phase(), last.from(), after.at()));
        if (after.batch().phase() != last.phase()) {
            next.add(new PhaseSpan(after.batch().phase(), after.at(), after.at()));
        }
        return next;
    }

    private OptionalDouble highest(Phase phase, Optional<Estimate> news) {
        if (!isHot(phase) || news.isEmpty()) return highestWorkCelsius;
        double celsius = news.get().chocolateCelsius();
        return OptionalDouble.of(Math.max(celsius, highestWorkCelsius.orElse(celsius)));
    }

    private OptionalDouble lowest(Phase phase, Optional<Estimate> news) {
        if ((phase != Phase.COOL && phase != Phase.SEED) || news.isEmpty()) return lowestCoolCelsius;
        double celsius = news.get().chocolateCelsius();
        return OptionalDouble.of(Math.min(celsius, lowestCoolCelsius.orElse(celsius)));
    }

    private static Duration over(Recipe recipe, Phase phase, Optional<Estimate> news, Duration passed) {
        double high = recipe.work().range().highCelsius() + SHOWN_AS_HIGH_KELVIN;
        boolean over =
                isHot(phase) && news.filter(e -> e.chocolateCelsius() > high).isPresent();
        return over ? passed : Duration.ZERO;
    }

    private static boolean isHot(Phase phase) {
        return phase == Phase.REWARM || phase == Phase.WORK;
    }

    private static Optional<Event.SeedLost> loss(List<Event> events) {
        return events.stream()
                .filter(Event.SeedLost.class::isInstance)
                .map(Event.SeedLost.class::cast)
                .findFirst();
    }

    private static Optional<Trouble> trouble(List<Event> events) {
        return events.stream()
                .filter(e -> e instanceof Event.AlarmRaised raised && !NO_TROUBLE.contains(raised.alarm()))
                .map(e -> (Event.AlarmRaised) e)
                .map(e -> new Trouble(e.alarm(), e.at()))
                .findFirst();
    }
}
