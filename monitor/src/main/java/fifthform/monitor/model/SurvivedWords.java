package fifthform.monitor.model;

import fifthform.curves.crystal.Advice;
import fifthform.curves.crystal.Copies;
import fifthform.curves.crystal.Overshoot;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Temper;
import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Setup;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CauseText;
import fifthform.monitor.texts.InWords;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What heat left alive, as the model has it: after an overshoot on Watch, at the moment of a loss in trace and debrief. */
public final class SurvivedWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** So long it stays where enough is left; where it is not, until there is enough again. Own choice. */
    private static final Duration NEWS = Duration.ofMinutes(5);

    /** In these the advice has been followed, or the next way up has begun. */
    private static final Set<Phase> ANSWERED = EnumSet.of(Phase.MELT, Phase.SEED, Phase.REWARM);

    private final Temper temper;
    private final Setup setup;
    private final Tally tally;
    private final Units units;

    SurvivedWords(Temper temper, Setup setup, Tally tally, Units units) {
        this.temper = temper;
        this.setup = setup;
        this.tally = tally;
        this.units = units;
    }

    /** Height, length, what is left and what to do; empty where there was no overshoot, it is long over or answered. */
    Optional<String> line(Instant now) {
        Optional<SeedWord> word = temper.watch().spoken().word();
        Optional<Overshoot> heat = temper.watch()
                .overshoot()
                .filter(SurvivedWords::hadSomething)
                .filter(o -> o.until().isPresent());
        if (word.isEmpty() || heat.isEmpty()) return Optional.empty();
        Overshoot over = heat.get();
        if (isAnswered(over.until().get())) return Optional.empty();
        boolean fresh = Duration.between(over.until().get(), now).compareTo(NEWS) < 0;
        if (!fresh && word.get() == SeedWord.ENOUGH) return Optional.empty();
        String survived = CauseText.WHAT_SURVIVED_ABOVE.say(
                units.withUnit(over.highestCelsius()),
                Spans.words(over.above()),
                units.plain(setup.recipe().meltOut().warnCelsius()),
                share(over.leftFraction()));
        return Optional.of(
                survived + temper.advice(setup).map(a -> " · " + advice(a)).orElse(""));
    }

    /** The way down from the melt is no overshoot: there was nothing to lose. */
    private static boolean hadSomething(Overshoot over) {
        return over.before().percentOfFat().bestGuess() > 0;
    }

    /** Cooled again, melted again, or on the next way up: what was left of the last one is no news any more. */
    private boolean isAnswered(Instant over) {
        return tally.spans().stream()
                .anyMatch(span -> ANSWERED.contains(span.phase()) && span.from().isAfter(over));
    }

    private String advice(Advice advice) {
        return switch (advice.what()) {
            case STOP -> CauseText.STOP_WARMING_GO_ON_ENOUGH_IS.say();
            case COOL_AGAIN ->
                CauseText.COOL_AGAIN.say(
                        new Phrases(units, setup.recipe())
                                .range(setup.recipe().cool().range()),
                        reason(advice.word()));
            case SEED ->
                CauseText.SEED_IT_UNDER.say(
                        grams(advice),
                        units.plain(setup.recipe().meltOut().limitCelsius()),
                        units.symbol(),
                        reason(advice.word()));
        };
    }

    private static String grams(Advice advice) {
        return advice.seedGrams().isPresent()
                ? CauseText.ABOUT_G.say(Math.round(advice.seedGrams().getAsDouble()))
                : "";
    }

    private static String reason(SeedWord word) {
        return word == SeedWord.TOO_FEW
                ? CauseText.TOO_FEW_ARE_LEFT.say()
                : CauseText.NOBODY_CAN_TELL_WHETHER_ENOUGH.say();
    }

    /** In words a hand can weigh; the model is not good to more. */
    static String share(double left) {
        String share;
        if (left >= 0.85) share = CauseText.NEARLY_ALL.say();
        else if (left >= 0.62) share = CauseText.ABOUT_THREE_QUARTERS.say();
        else if (left >= 0.42) share = CauseText.ABOUT_HALF.say();
        else if (left >= 0.29) share = CauseText.ABOUT_A_THIRD.say();
        else if (left >= 0.15) share = CauseText.ABOUT_A_FIFTH.say();
        else if (left >= 0.05) share = CauseText.ABOUT_A_TENTH.say();
        else share = CauseText.ALMOST_NONE.say();
        return CauseText.OF_THE_CRYSTALS_AS_THE_MODEL.say(share);
    }

    /** The word at the line that marks the loss in the trace, for example {@code seed likely lost 14:12, 34.6 °C}. */
    static String flag(Event.SeedLost lost, Units units, ZoneId zone) {
        return CauseText.SEED_LIKELY_LOST.say(
                CLOCK.format(lost.at().atZone(zone)), units.withUnit(lost.highestCelsius()));
    }

    /** The last word about the crystals, and a line for each time that heat cost the seed; for the end of a session. */
    public static List<String> closing(SessionSnapshot last, Units units, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        last.tally()
                .crystals()
                .ifPresent(word -> lines.add(
                        CauseText.CRYSTALS_THE_LAST_WORD.say(InWords.crystals(word), CrystalModel.LIMITS.say())));
        for (Event.SeedLost lost : last.trace().losses())
            lines.add(closing(lost, last.state().started(), last.setup(), units, zone));
        return lines;
    }

    /** A share of the fat as percent, with the one digit that it is good for. */
    public static String percentOfFat(double fraction) {
        return CrystalModel.digit(
                new SeedRange(fraction, fraction, fraction).percentOfFat().bestGuess());
    }

    private static String closing(Event.SeedLost lost, Instant started, Setup setup, Units units, ZoneId zone) {
        return CauseText.SEED_LIKELY_LOST_AT_FROM_THE.say(
                CLOCK.format(lost.at().atZone(zone)),
                Spans.words(Duration.between(started, lost.at())),
                units.withUnit(lost.highestCelsius()),
                Spans.words(Duration.ofMillis(Math.round(1000 * lost.aboveSeconds()))),
                units.withUnit(setup.recipe().meltOut().warnCelsius()),
                CrystalModel.digit(lost.before().percentOfFat().bestGuess()),
                CrystalModel.digit(100 * Copies.LEAST_SEED));
    }
}
