package fifthform.curves.review;

import fifthform.curves.cue.CueId;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rest: too cool while it is worked, cues that nobody followed, no proof, never reached.
 *
 * @param reachedAt when it first came to the working range after a cool step
 * @param provedAt when a sample was first tried
 * @param coolSince since when it is too cool to work
 * @param cool the longest such time
 * @param cues when each cue was last given, where nobody had followed it yet
 * @param ignored cues that stood for long
 * @param stopCooling when the cue to leave the cold water was first given
 */
record WorkLook(
        Optional<Instant> reachedAt,
        Optional<Instant> provedAt,
        Optional<Instant> coolSince,
        double coolestCelsius,
        Optional<Cause> cool,
        Map<CueId, Instant> cues,
        List<Cause> ignored,
        Optional<Instant> stopCooling) {
    static final WorkLook NONE = new WorkLook(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Double.POSITIVE_INFINITY,
            Optional.empty(),
            new EnumMap<>(CueId.class),
            List.of(),
            Optional.empty());

    /** So far below the working range it is too thick to fill moulds. As the simulator's makers have it. */
    private static final double TOO_COOL_KELVIN = 1.5;

    private static final Duration TOO_COOL_FOR = Duration.ofSeconds(60);

    /** The cues that ask for one act of the hands with the bowl; a minute later nobody means to follow. */
    private static final List<CueId> ACTS =
            List.of(CueId.MELTED, CueId.STOP_COOLING, CueId.LIFT_NOW, CueId.OFF_NOW, CueId.PUT_BACK);

    private static final Duration IGNORED_FOR = Duration.ofSeconds(60);

    private static final int MOST = 8;

    WorkLook with(Glimpse g) {
        Optional<Instant> proved = provedAt;
        if (proved.isEmpty() && g.input instanceof SampleProved) proved = Optional.of(g.now);
        Optional<Instant> reached = reachedAt;
        boolean isThere = Glimpse.isHot(g.phase)
                && g.celsius.orElse(Double.NEGATIVE_INFINITY)
                        >= g.recipe().work().range().lowCelsius();
        if (reached.isEmpty() && isThere) reached = Optional.of(g.now);
        WorkLook here = proved == provedAt && reached == reachedAt
                ? this
                : new WorkLook(reached, proved, coolSince, coolestCelsius, cool, cues, ignored, stopCooling);
        return here.worked(g).cued(g);
    }

    private WorkLook worked(Glimpse g) {
        boolean working = g.phase == Phase.WORK;
        if (!working) return coolSince.isEmpty() ? this : cool(Optional.empty(), Double.POSITIVE_INFINITY, cool);
        if (g.celsius.isEmpty()) return this;
        double celsius = g.celsius.getAsDouble();
        double low = g.recipe().work().range().lowCelsius();
        if (celsius >= low - TOO_COOL_KELVIN) {
            return coolSince.isEmpty() ? this : cool(Optional.empty(), Double.POSITIVE_INFINITY, cool);
        }
        Instant since = coolSince.orElse(g.now);
        double coolest = Math.min(coolestCelsius, celsius);
        Duration lasted = Duration.between(since, g.now);
        boolean longer = lasted.compareTo(TOO_COOL_FOR) >= 0
                && lasted.compareTo(cool.flatMap(Cause::lasted).orElse(Duration.ZERO)) > 0;
        Optional<Cause> cause = longer
                ? Optional.of(Cause.of(Kind.WORKED_TOO_COOL, g.phase, since)
                        .reaching(coolest)
                        .against(low)
                        .lasting(lasted))
                : cool;
        return cool(Optional.of(since), coolest, cause);
    }

    private WorkLook cool(Optional<Instant> since, double coolest, Optional<Cause> cause) {
        return new WorkLook(reachedAt, provedAt, since, coolest, cause, cues, ignored, stopCooling);
    }

    private WorkLook cued(Glimpse g) {
        WorkLook here = this;
        for (CueId id : ACTS) {
            Optional<Instant> open = g.after.cues().openSince(id);
            boolean known = cues.containsKey(id);
            if (open.isPresent() == known) continue;
            here = here.cue(id, open, g);
        }
        return here;
    }

    private WorkLook cue(CueId id, Optional<Instant> open, Glimpse g) {
        EnumMap<CueId, Instant> now = new EnumMap<>(CueId.class);
        now.putAll(cues);
        List<Cause> all = ignored;
        if (open.isPresent()) {
            now.put(id, open.get());
        } else {
            Instant since = now.remove(id);
            if (Duration.between(since, g.now).compareTo(IGNORED_FOR) >= 0 && all.size() < MOST) {
                all = new ArrayList<>(all);
                all.add(ignored(id, since, g.phaseBefore, g.now));
            }
        }
        Optional<Instant> stop = id == CueId.STOP_COOLING && open.isPresent() ? open : stopCooling;
        return new WorkLook(reachedAt, provedAt, coolSince, coolestCelsius, cool, now, List.copyOf(all), stop);
    }

    private static Cause ignored(CueId id, Instant since, Phase phase, Instant now) {
        return Cause.of(Kind.CUE_IGNORED, phase, since)
                .lasting(Duration.between(since, now))
                .told(id.word(), since);
    }

    List<Cause> causes(Phase phase, Instant now) {
        List<Cause> all = new ArrayList<>(ignored);
        cool.ifPresent(all::add);
        cues.forEach((id, since) -> {
            if (Duration.between(since, now).compareTo(IGNORED_FOR) >= 0) all.add(ignored(id, since, phase, now));
        });
        if (reachedAt.isEmpty()) all.add(Cause.of(Kind.UNFINISHED, phase, now));
        else if (provedAt.isEmpty()) all.add(Cause.of(Kind.NOT_PROVED, phase, now));
        return all;
    }
}
