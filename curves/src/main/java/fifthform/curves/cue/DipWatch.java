package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Mark;
import fifthform.curves.cue.Dip.Purpose;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;

/**
 * Follows a dip from being asked for to its peak. A dip may be over before the curve shows that it began, and keys are
 * forgotten; whoever is asked for seconds counts them. So where neither key nor curve says otherwise, a dip is taken to
 * have gone as it was asked for.
 */
final class DipWatch {
    /** So long after it should be over a dip that nothing shows is taken for done. Own choice. */
    private static final double UNSEEN_SECONDS = 40;

    private static final double LATE_HANDS_SECONDS = 5;
    private static final double UNSEEN_LESSON_SECONDS = 8;
    private static final double ASK_AGAIN_SECONDS = 120;

    private static final double ROSE_KELVIN = 0.1;

    /** With what the room took put back, which is known less well. */
    private static final double SURELY_ROSE_KELVIN = 0.25;

    /**
     * By so much it must stand warmer all the same: what the room took is reckoned from one moment's rate, and somebody who
     * takes no notice would be asked for longer and longer dips by its noise. Own choice.
     */
    private static final double STANDS_WARMER_KELVIN = 0.05;

    /** A rate come down to this share of the dip's fastest: the bath is gone, whatever the keys say. */
    private static final double FADED = 0.6;

    private static final double FADING_TAKES_SECONDS = 6;

    /** The curve shows a move so late, about. */
    private static final double SEEN_LATE_SECONDS = 8;

    /** The peak is looked for from so long after the lift, and not longer than so long. Tuned on training kitchens. */
    private static final double FIRST_LOOK_SECONDS = 20;

    private static final double LAST_LOOK_SECONDS = 240;

    /** Thick walls let nothing through for half a minute. */
    private static final double LATE_BOWL_SECONDS = 40;

    private static final double SHOWN_KELVIN = 0.15;

    private static final double FAR_KELVIN = 0.7;

    /** A rate come down to this share of the dip's fastest is on its way to the turn. */
    private static final double PAST_THE_FASTEST = 0.8;

    private static final double FALLS_KELVIN_PER_SECOND = -0.15 / 60;
    private static final int LONG_PACE_SECONDS = 30;
    private static final double TURNED_KELVIN_PER_SECOND = 0.1 / 60;

    /** Water that nobody speaks of must warm the bowl by so much a second. Own choice. */
    private static final double UNASKED_KELVIN_PER_SECOND = 1.0 / 60;

    /** A slower pace tells nothing of how late a bowl is. */
    private static final double TELLING_KELVIN_PER_SECOND = 0.6 / 60;

    /** Nor does a dip that gave less, K: a step of the display or a stir moves its peak as much. */
    private static final double TELLING_KELVIN = 0.4;

    private final Look look;
    private final Contact contact;
    private final Instant now;

    DipWatch(Look look) {
        this.look = look;
        this.contact = look.situation().batch().contact();
        this.now = look.situation().now();
    }

    Dips next() {
        Phase phase = look.phase();
        if (phase == Phase.MELT || phase == Phase.COOL || isToldInColdWater()) return Dips.NONE;
        Dips before = phase == Phase.SEED
                ? look.before().dips().held(now)
                : look.before().dips();
        if (phase == Phase.REST) return before.after(before.response());
        if (before.dip().isEmpty()) return unasked(before);
        Dip dip = before.dip().get().reaching(look.celsius(), look.rate());
        return switch (dip.stage()) {
            case ASKED -> asked(before, dip);
            case OVER_BATH -> isNone(dip) ? before.without(dip) : before.with(overBath(dip));
            case LOOKING -> looking(before, dip);
        };
    }

    private boolean isToldInColdWater() {
        return contact.place() == Place.COLD_WATER && contact.evidence() == Evidence.TOLD;
    }

    /** A bowl that is put over the bath unasked, where dips are the way to go, dips as well. */
    private Dips unasked(Dips before) {
        boolean fresh = before.lookedAt()
                .or(before::begunAt)
                .filter(contact.since()::isBefore)
                .isEmpty();
        if (!look.isSurelyOverBath() || !look.dipsWanted() || !fresh || !isShown()) return before;
        Purpose purpose = look.phase() == Phase.WORK ? Purpose.HOLD : Purpose.REACH;
        Instant since = contact.evidence() == Evidence.TOLD
                ? contact.since()
                : contact.since().minusMillis(Math.round(1000 * SEEN_LATE_SECONDS));
        return before.with(
                new DipSize(look, purpose, before.response()).asked(now).overBath(since));
    }

    /** A bowl that warms up on the table after the cold water looks like a bath to whoever is not told. */
    private boolean isShown() {
        return contact.evidence() == Evidence.TOLD || look.pace() >= UNASKED_KELVIN_PER_SECOND;
    }

    private Dips asked(Dips before, Dip dip) {
        double reaction = look.reactionSeconds();
        boolean put = contact.place() == Place.BATH && contact.since().isAfter(dip.askedAt()) && !isAir(dip);
        Instant expected = later(dip.askedAt(), reaction);
        if (put) {
            boolean told = contact.evidence() == Evidence.TOLD;
            // The curve shows a move late: what it seemed to show within the hands' reaction was another one.
            return before.with(dip.overBath(told ? contact.since() : expected));
        }
        double overFor = dip.secondsAt(now) - reaction - dip.seconds();
        boolean rose = dip.riseKelvin(now) >= ROSE_KELVIN;
        // Who presses keys is waited for; who presses none has done it by now, and must not be asked for it twice.
        double wait = contact.evidence() == Evidence.TOLD && !isAir(dip) ? UNSEEN_SECONDS : LATE_HANDS_SECONDS;
        boolean done = overFor >= 0 && rose || overFor >= wait;
        return before.with(done ? dip.looking(later(expected, dip.seconds()), dip.seconds()) : dip);
    }

    /** Nobody asked, nobody said so, and now the curve takes back that the bowl was put over the bath. */
    private boolean isNone(Dip dip) {
        return !dip.isCounted()
                && contact.place() != Place.BATH
                && contact.evidence() != Evidence.TOLD
                && dip.highestCelsius() - dip.fromCelsius() < ROSE_KELVIN;
    }

    private Dip overBath(Dip dip) {
        double lasted = dip.secondsAt(now);
        if (contact.place() != Place.BATH) {
            boolean told = contact.evidence() == Evidence.TOLD;
            double stay = Duration.between(dip.since(), contact.since()).toMillis() / 1000.0;
            double real = told ? stay : Math.max(Math.min(dip.seconds(), stay), stay - SEEN_LATE_SECONDS);
            return dip.looking(later(dip.since(), real), real);
        }
        boolean faded = lasted >= dip.seconds() + FADING_TAKES_SECONDS
                && dip.fastestKelvinPerMinute() > 0
                && look.rate() < FADED * dip.fastestKelvinPerMinute();
        return faded ? dip.looking(later(dip.since(), dip.seconds()), dip.seconds()) : dip;
    }

    private Dips looking(Dips before, Dip dip) {
        boolean again = look.isSurelyOverBath() && contact.since().isAfter(dip.since());
        double looked = dip.secondsAt(now);
        boolean turned =
                look.pace() <= FALLS_KELVIN_PER_SECOND || look.pace(LONG_PACE_SECONDS) <= TURNED_KELVIN_PER_SECOND;
        Dip marked = marked(dip, looked);
        boolean over = turned && looked >= firstLook(dip) || mayGoOn(marked, looked) || looked >= LAST_LOOK_SECONDS;
        if (!again && (!over || waitsToAskAgain(dip))) return before.with(marked);
        Dips known = turned && dip.riseKelvin(now) >= TELLING_KELVIN
                ? marked.mark().map(m -> before.late(late(marked, m))).orElse(before)
                : before;
        Dips after =
                isAir(dip) ? known.afterAir(learned(before.air(), dip)) : known.after(learned(before.response(), dip));
        return after.looked(now);
    }

    /** Asked for as a touch of warm air, and the bowl was not taken to the bath all the same. */
    private boolean isAir(Dip dip) {
        // Warm air looks like a bath; only a key tells the two apart.
        boolean moved = contact.evidence() == Evidence.TOLD && contact.since().isAfter(dip.askedAt());
        return dip.purpose() == Purpose.HOLD && look.holdsByAir() && !moved;
    }

    /** Through a thick wall the fastest rise comes half a minute after the lift; before it nothing can be reckoned. */
    private boolean fades(Dip dip) {
        boolean shown = dip.riseKelvin(now) >= SHOWN_KELVIN;
        return !shown || look.rate() < PAST_THE_FASTEST * dip.fastestKelvinPerMinute();
    }

    private Dip marked(Dip dip, double looked) {
        boolean telling = dip.mark().isEmpty()
                && looked >= FIRST_LOOK_SECONDS
                && fades(dip)
                && look.pace() >= TELLING_KELVIN_PER_SECOND;
        return telling ? dip.marked(new Mark(look.celsius(), look.pace())) : dip;
    }

    private static double late(Dip dip, Mark mark) {
        return Math.max(0, dip.highestCelsius() - mark.celsius()) / mark.kelvinPerSecond();
    }

    private double firstLook(Dip dip) {
        return dip.riseKelvin(now) >= SHOWN_KELVIN ? FIRST_LOOK_SECONDS : LATE_BOWL_SECONDS;
    }

    /**
     * Even if all comes that may still be under way, the next dip is needed, and no time is lost by waiting for it. But
     * the first dip whose pace tells how late this bowl is, is looked at to its end, since nothing else says it.
     */
    private boolean mayGoOn(Dip dip, double looked) {
        boolean lateKnown = look.before().dips().lateSeconds().isPresent();
        boolean tells = dip.mark().isPresent() && !lateKnown;
        double aim = look.situation().recipe().work().range().midCelsius();
        return !tells
                && fades(dip)
                && looked >= firstLook(dip)
                && look.celsius() + look.mostUnderWay() < aim - FAR_KELVIN
                && look.turnUpperCelsius() < aim;
    }

    private DipResponse learned(DipResponse response, Dip dip) {
        boolean lesson = !isUnseen(dip) || mayHaveBeen(dip);
        return lesson ? response.seen(dip.seconds(), dip.riseKelvin(now) + look.mostUnderWay()) : response;
    }

    /** Nothing rose and nobody said that the bowl was moved. */
    private boolean isUnseen(Dip dip) {
        boolean warmer = look.celsius() - dip.fromCelsius() >= STANDS_WARMER_KELVIN;
        boolean rose = dip.highestCelsius() - dip.fromCelsius() >= ROSE_KELVIN
                || warmer && dip.riseKelvin(now) + look.mostUnderWay() >= SURELY_ROSE_KELVIN;
        return !rose && (isAir(dip) || contact.since().isBefore(dip.askedAt()));
    }

    /**
     * A few seconds over a weak bath may show nothing; where no keys are pressed, longer ones are asked for, but only up to
     * where a dip that was never done would have been no harm. Whoever presses keys and pressed none has not dipped.
     */
    private boolean mayHaveBeen(Dip dip) {
        return dip.purpose() == Purpose.REACH
                && contact.evidence() != Evidence.TOLD
                && dip.seconds() < UNSEEN_LESSON_SECONDS;
    }

    /** A touch of warmth that was not wanted is not asked for again at once. */
    private boolean waitsToAskAgain(Dip dip) {
        double asked = Duration.between(dip.askedAt(), now).toMillis() / 1000.0;
        return dip.purpose() == Purpose.HOLD && isUnseen(dip) && asked < ASK_AGAIN_SECONDS;
    }

    private static Instant later(Instant from, double seconds) {
        return from.plusMillis(Math.round(1000 * seconds));
    }
}
