package fifthform.curves.review;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.StirWatch;
import fifthform.curves.crystal.Temper;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the cool step made crystals: warm, short, deep, long or unstirred.
 *
 * @param lowestCelsius the coldest of this cool step, °C; +∞ before its first reading
 * @param cold time cold enough for crystals
 * @param warmedAt when the rewarm that followed began
 * @param word what was said of the seed when the rewarm had come to the working range
 * @param judged what is to be said of a cool step that has ended
 * @param deepSince since when it is, or was, too deep
 * @param deep time below
 * @param deepestCelsius the coldest of it, °C
 * @param thickAt when it was said to be thick in a cool step that was long
 * @param unstirredAt when it was plain that nobody stirred
 */
record CoolLook(
        double lowestCelsius,
        Duration cold,
        Optional<Instant> warmedAt,
        Optional<Cause> judged,
        Optional<Instant> deepSince,
        Duration deep,
        double deepestCelsius,
        Optional<Cause> thick,
        Optional<Cause> unstirred) {
    static final CoolLook NONE = new CoolLook(
            Double.POSITIVE_INFINITY,
            Duration.ZERO,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Duration.ZERO,
            Double.POSITIVE_INFINITY,
            Optional.empty(),
            Optional.empty());

    /** So far above the cool range crystals still form about as well. As the engine counts its hold. */
    private static final double COOL_MARGIN_KELVIN = 0.5;

    /** So far above it they do not within a usual hold. Own choice. */
    private static final double PLAINLY_WARM_KELVIN = 1;

    /** A dip below the limit that is shorter did no harm that anybody would see. Own choice. */
    private static final Duration DEEP_FOR = Duration.ofSeconds(20);

    /** A hold this many times the recipe's is long. Own choice, as the cue's own fence. */
    private static final double LONG_TIMES = 2.5;

    /** A tip that hangs in the air is noticed within this. Own choice. */
    private static final Duration RAN_OFF_WITHIN = Duration.ofMinutes(3);

    /** Seen at rest in the water for so long, and hardly ever stirred. */
    private static final double SEEN_SECONDS = 90;

    private static final double MOSTLY = 3;

    CoolLook with(Glimpse g) {
        CoolLook here = g.raised(AlarmId.READING_DOUBTFUL) ? doubted(g) : this;
        boolean coolsAgain = Glimpse.isCool(g.phase) && (g.phaseBefore == Phase.MELT || warmedAt.isPresent());
        // A second cool step mends what the first left undone; what it did too much of stays.
        if (coolsAgain && !Glimpse.isCool(g.phaseBefore)) here = here.begun(g.phaseBefore == Phase.MELT);
        if (Glimpse.isCool(g.phase)) return here.cooling(g);
        if (Glimpse.isCool(g.phaseBefore) && Glimpse.isHot(g.phase)) here = here.warmed(g);
        return here.warmedAt.isPresent() && here.judged.isEmpty() ? here.judging(g) : here;
    }

    /** What ran off to the cold just before it was doubted was the tip, not the chocolate. */
    private CoolLook doubted(Glimpse g) {
        boolean lately = deepSince
                .filter(d -> Duration.between(d, g.now).compareTo(RAN_OFF_WITHIN) < 0)
                .isPresent();
        if (!lately) return this;
        return new CoolLook(
                lowestCelsius,
                cold,
                warmedAt,
                judged,
                Optional.empty(),
                Duration.ZERO,
                Double.POSITIVE_INFINITY,
                thick,
                unstirred);
    }

    private CoolLook begun(boolean anew) {
        return new CoolLook(
                anew ? Double.POSITIVE_INFINITY : lowestCelsius,
                anew ? Duration.ZERO : cold,
                Optional.empty(),
                Optional.empty(),
                deepSince,
                deep,
                deepestCelsius,
                thick,
                unstirred);
    }

    private CoolLook cooling(Glimpse g) {
        if (g.celsius.isEmpty()) return this;
        double celsius = g.celsius.getAsDouble();
        boolean isCold = celsius <= g.recipe().cool().range().highCelsius() + COOL_MARGIN_KELVIN;
        boolean isDeep = celsius < g.tooDeepCelsius();
        Duration coldNow = isCold ? cold.plus(g.passed) : cold;
        return new CoolLook(
                Math.min(lowestCelsius, celsius),
                coldNow,
                warmedAt,
                judged,
                isDeep && deepSince.isEmpty() ? Optional.of(g.now) : deepSince,
                isDeep ? deep.plus(g.passed) : deep,
                isDeep ? Math.min(deepestCelsius, celsius) : deepestCelsius,
                thick.or(() -> thick(g, coldNow)),
                unstirred.or(() -> unstirred(g)));
    }

    private static Optional<Cause> thick(Glimpse g, Duration cold) {
        boolean isThick = g.after
                .crystals()
                .filter(c -> c.watch().spoken().thick() && c.watch().misgiving().isEmpty())
                .isPresent();
        boolean isLong =
                cold.toMillis() > LONG_TIMES * g.recipe().cool().dwell().toMillis();
        return isThick && isLong
                ? Optional.of(Cause.of(Kind.COOLED_TOO_LONG, g.phase, g.now).by(cold))
                : Optional.empty();
    }

    private static Optional<Cause> unstirred(Glimpse g) {
        Optional<StirWatch> stir = g.after.crystals().map(Temper::stir);
        boolean plain = stir.filter(s -> s.stillSeconds() >= SEEN_SECONDS
                        && s.stillSeconds() > MOSTLY * s.stirredSeconds()
                        && s.told().isEmpty())
                .isPresent();
        boolean told = stir.filter(s -> s.evidence() == Evidence.TOLD && s.stirring() == Stirring.STILL)
                .isPresent();
        if (!plain && !told) return Optional.empty();
        Duration seen = Duration.ofSeconds((long) stir.orElseThrow().stillSeconds());
        return Optional.of(Cause.of(Kind.NOT_STIRRED, g.phase, g.now).by(seen));
    }

    private CoolLook warmed(Glimpse g) {
        return new CoolLook(
                lowestCelsius,
                cold,
                Optional.of(g.now),
                Optional.empty(),
                deepSince,
                deep,
                deepestCelsius,
                thick,
                unstirred);
    }

    /** On the way up crystals still form; where it comes to the working range they count. */
    private CoolLook judging(Glimpse g) {
        boolean arrived = g.celsius.orElse(Double.NEGATIVE_INFINITY)
                >= g.recipe().work().range().lowCelsius();
        if (!arrived || lowestCelsius == Double.POSITIVE_INFINITY) return this;
        Optional<SeedWord> word =
                g.after.crystals().flatMap(c -> c.watch().spoken().word());
        double high = g.recipe().cool().range().highCelsius();
        boolean warm = lowestCelsius > high + COOL_MARGIN_KELVIN;
        boolean plainlyWarm = lowestCelsius > high + PLAINLY_WARM_KELVIN;
        boolean tooFew = word.filter(w -> w == SeedWord.TOO_FEW).isPresent();
        boolean enough = word.filter(w -> w == SeedWord.ENOUGH).isPresent();
        boolean shortly = cold.toMillis() < g.recipe().cool().dwell().toMillis() / 2.0;
        Optional<Cause> cause = Optional.empty();
        if (!enough && (plainlyWarm || warm && (tooFew || shortly))) {
            cause = Optional.of(Cause.of(Kind.COOLED_TOO_LITTLE, Phase.COOL, warmedAt.orElseThrow())
                    .reaching(lowestCelsius)
                    .against(high));
        } else if (tooFew || !enough && shortly) {
            cause = Optional.of(Cause.of(Kind.HELD_TOO_SHORT, Phase.SEED, warmedAt.orElseThrow())
                    .reaching(lowestCelsius)
                    .by(cold));
        }
        // Judged once: that nothing is to be said is kept as a rewarm that is no longer waited for.
        return new CoolLook(
                lowestCelsius,
                cold,
                cause.isPresent() ? warmedAt : Optional.empty(),
                cause,
                deepSince,
                deep,
                deepestCelsius,
                thick,
                unstirred);
    }

    List<Cause> causes(double tooDeepCelsius, Optional<Instant> stopCooling) {
        List<Cause> all = new ArrayList<>();
        judged.ifPresent(all::add);
        if (deep.compareTo(DEEP_FOR) >= 0) {
            Cause cause = Cause.of(Kind.COOLED_TOO_DEEP, Phase.COOL, deepSince.orElseThrow())
                    .reaching(deepestCelsius)
                    .against(tooDeepCelsius)
                    .lasting(deep);
            boolean said = stopCooling.filter(s -> s.isBefore(deepSince.get())).isPresent();
            all.add(said ? cause.told("stop-cooling", stopCooling.get()) : cause);
        }
        thick.ifPresent(all::add);
        unstirred.ifPresent(all::add);
        return all;
    }
}
