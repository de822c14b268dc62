package fifthform.curves.review;

import fifthform.curves.alarm.AlarmTable;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Heat after the cool step: late lifts and what they led to, a hot bath, seed lost.
 *
 * @param cued the cue to leave the bath that stood in this stay, and since when
 * @param lift the latest lift off the bath
 * @param over the stay above the warning temperature that is going on
 * @param past those that are over, oldest first; a batch with more than a few says nothing new
 * @param bathHot when the bath was first too hot in the rewarm
 * @param bathHotCelsius how hot, °C
 * @param seedLost the first loss of the seed
 * @param watched the latest lift, while what follows from it is still under way
 * @param slow the first late lift that passed the working range, though perhaps not the warning temperature
 */
record HeatLook(
        Optional<Cue> cued,
        Optional<Off> lift,
        Optional<Over> over,
        List<Over> past,
        Optional<Cause> bathHot,
        Optional<Cause> seedLost,
        Optional<Off> watched,
        Optional<Cause> slow) {
    static final HeatLook NONE = new HeatLook(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private static final int MOST = 8;

    /** What rises above the limit longer after a lift did not come from that bath. */
    private static final Duration COAST = Duration.ofMinutes(6);

    /** Hands need some seconds; a lift that was later by less was not late. Own choice. */
    private static final Duration LATE = Duration.ofSeconds(3);

    /** Above the limit for less than this is a flicker of the reading. */
    private static final Duration BRIEF = Duration.ofSeconds(5);

    /** An estimate that comes so near to the end of the range cannot tell whether it was passed, K. */
    private static final double AT_THE_END_KELVIN = 0.1;

    /** So far below the limit a stay above it is over, K: as the alarm has it. */
    private static final double BACK_KELVIN = AlarmTable.of(AlarmId.OVER_RANGE).deadbandKelvin();

    /** So late by its cue a lift is named wherever it came to the end of the working range. Own choice. */
    private static final Duration PLAINLY_LATE = Duration.ofSeconds(8);

    /** A cue, and since when it stands. */
    record Cue(CueId id, Instant at) {}

    /**
     * A lift off the bath.
     *
     * @param at when
     * @param cue the cue that stood then
     * @param kelvinPerSecond how fast it warmed
     * @param phase the phase then
     */
    record Off(Instant at, Optional<Cue> cue, double kelvinPerSecond, Phase phase) {}

    /**
     * A stay above the warning temperature.
     *
     * @param since when it began
     * @param until the last moment of it that is known
     * @param highestCelsius its hottest, °C
     * @param phase the phase when it began
     * @param lift the lift that it followed; of a bowl that was still on the bath, the one that ended it
     * @param cue a cue to lift that stands while the bowl is still on the bath
     */
    record Over(
            Instant since, Instant until, double highestCelsius, Phase phase, Optional<Off> lift, Optional<Cue> cue) {
        Over going(Instant now, double celsius) {
            return new Over(since, now, Math.max(highestCelsius, celsius), phase, lift, cue);
        }

        Over liftedBy(Off off) {
            return new Over(since, until, highestCelsius, phase, Optional.of(off), cue);
        }
    }

    HeatLook with(Glimpse g) {
        HeatLook here = moved(g);
        return here.warned(g).coasted(g).heated(g);
    }

    private HeatLook moved(Glimpse g) {
        boolean onBath = g.after.batch().place() == Place.BATH;
        boolean wasOnBath = g.before.batch().place() == Place.BATH;
        Optional<Cue> standing = cued;
        if (onBath && Glimpse.isHot(g.phase)) {
            Optional<Cue> open = openCue(g);
            if (standing.isEmpty() && open.isPresent()) standing = open;
        }
        if (wasOnBath && !onBath && (Glimpse.isHot(g.phase) || Glimpse.isHot(g.phaseBefore))) {
            double rate = g.before.estimate().map(e -> e.rateKelvinPerMinute()).orElse(0.0) / 60;
            Off off = new Off(g.after.batch().contact().since(), standing, rate, g.phaseBefore);
            Optional<Over> stillOver = over.map(o -> o.lift().isPresent() ? o : o.liftedBy(off));
            return new HeatLook(
                    Optional.empty(), Optional.of(off), stillOver, past, bathHot, seedLost, Optional.of(off), slow);
        }
        if (!onBath && cued.isPresent()) standing = Optional.empty();
        return standing == cued ? this : new HeatLook(standing, lift, over, past, bathHot, seedLost, watched, slow);
    }

    private static Optional<Cue> openCue(Glimpse g) {
        for (CueId id : List.of(CueId.LIFT_NOW, CueId.OFF_NOW)) {
            Optional<Instant> since = g.after.cues().openSince(id);
            if (since.isPresent()) return Optional.of(new Cue(id, since.get()));
        }
        return Optional.empty();
    }

    private HeatLook warned(Glimpse g) {
        Optional<Cause> bath = bathHot;
        Optional<Cause> lost = seedLost;
        for (Event event : g.step.events()) {
            if (event instanceof Event.AlarmRaised raised
                    && raised.alarm() == AlarmId.BATH_HOT
                    && bath.isEmpty()
                    && Glimpse.isHot(g.phase)) {
                Cause cause = Cause.of(Kind.BATH_TOO_HOT, g.phase, g.now)
                        .against(g.setup.bathCelsius().orElse(g.recipe().rewarmBathCelsius()))
                        .told(AlarmId.BATH_HOT.word(), g.now);
                bath = Optional.of(
                        raised.figureCelsius().isPresent()
                                ? cause.reaching(raised.figureCelsius().getAsDouble())
                                : cause);
            }
            if (event instanceof Event.SeedLost gone && lost.isEmpty()) {
                lost = Optional.of(Cause.of(Kind.SEED_LOST, g.phase, g.now)
                        .reaching(gone.highestCelsius())
                        .lasting(Duration.ofMillis(Math.round(1000 * gone.aboveSeconds()))));
            }
        }
        return bath == bathHot && lost == seedLost
                ? this
                : new HeatLook(cued, lift, over, past, bath, lost, watched, slow);
    }

    /** The way of the heat after a lift, up to its turn; what rises after that has another cause. */
    private HeatLook coasted(Glimpse g) {
        if (watched.isEmpty()) return this;
        Off off = watched.get();
        boolean turned = g.step.events().stream().anyMatch(Event.Turned.class::isInstance)
                || Duration.between(off.at(), g.now).compareTo(COAST) > 0;
        Optional<Cause> found = slow(off, g);
        Optional<Off> still = turned ? Optional.empty() : watched;
        Optional<Off> near = turned && over.isEmpty() ? Optional.empty() : lift;
        if (found == slow && still == watched) return this;
        return new HeatLook(cued, near, over, past, bathHot, seedLost, still, found);
    }

    private Optional<Cause> slow(Off off, Glimpse g) {
        double high = g.recipe().work().range().highCelsius();
        double celsius = g.celsius.orElse(Double.NEGATIVE_INFINITY);
        if (off.cue().isEmpty() || celsius <= high - AT_THE_END_KELVIN) return slow;
        Instant onTime = off.cue().get().at().plus(g.setup.reactionTime());
        boolean other = slow.filter(s -> !s.at().equals(onTime)).isPresent();
        boolean cooler =
                slow.filter(s -> celsius <= s.celsius().orElse(celsius)).isPresent();
        Duration after = Duration.between(onTime, off.at());
        if (other || cooler || after.compareTo(PLAINLY_LATE) <= 0) return slow;
        return Optional.of(byCue(off.cue().get(), off.phase(), after, celsius, high, onTime));
    }

    private static Cause byCue(Cue cue, Phase phase, Duration after, double celsius, double high, Instant at) {
        return Cause.of(Kind.LIFTED_LATE, phase, at)
                .reaching(celsius)
                .against(high)
                .by(after)
                .told(cue.id().word(), cue.at());
    }

    private HeatLook heated(Glimpse g) {
        boolean begins = over.isEmpty()
                && (g.raised(AlarmId.OVER_RANGE) || g.raised(AlarmId.NEAR_MELT_OUT) || g.raised(AlarmId.MELT_OUT));
        double warn = g.recipe().meltOut().warnCelsius();
        if (begins) {
            double celsius = g.celsius.orElse(
                    g.after.estimate().map(e -> e.chocolateCelsius()).orElse(warn));
            boolean onBath = g.after.batch().place() == Place.BATH;
            Optional<Off> from = onBath
                    ? Optional.empty()
                    : lift.filter(l -> Duration.between(l.at(), g.now).compareTo(COAST) <= 0);
            return with(Optional.of(new Over(g.now, g.now, celsius, g.phase, from, cued)), past);
        }
        if (over.isEmpty()) return this;
        // Not as soon as the alarm is over: a worse one that speaks for it ends it too.
        boolean back = g.celsius.isPresent()
                && g.celsius.getAsDouble() < warn - BACK_KELVIN
                && !g.after.alarms().of(AlarmId.OVER_RANGE).state().isStanding();
        if (back || !Glimpse.isHot(g.phase)) {
            List<Over> all = new ArrayList<>(past);
            if (all.size() < MOST) all.add(over.get());
            return with(Optional.empty(), all);
        }
        boolean hot = g.celsius.orElse(Double.NEGATIVE_INFINITY) > warn;
        return hot ? with(Optional.of(over.get().going(g.now, g.celsius.getAsDouble())), past) : this;
    }

    private HeatLook with(Optional<Over> now, List<Over> before) {
        return new HeatLook(cued, lift, now, before, bathHot, seedLost, watched, slow);
    }

    List<Cause> causes(double workHigh, double warnCelsius, Duration reaction) {
        List<Cause> all = new ArrayList<>();
        List<Over> overs = new ArrayList<>(past);
        over.ifPresent(overs::add);
        overs.removeIf(o -> Duration.between(o.since(), o.until()).compareTo(BRIEF) < 0);
        for (Over o : overs) {
            late(o, workHigh, reaction)
                    // One lift may lead to two stays above: it was late once.
                    .filter(l -> all.stream().noneMatch(c -> c.kind() == l.kind() && c.at().equals(l.at())))
                    .ifPresent(all::add);
            all.add(Cause.of(Kind.OVERSHOT, o.phase(), o.since())
                    .reaching(o.highestCelsius())
                    .against(warnCelsius)
                    .lasting(Duration.between(o.since(), o.until())));
        }
        slow.filter(s -> all.stream()
                        .noneMatch(c -> c.kind() == Kind.LIFTED_LATE && c.said().equals(s.said())))
                .ifPresent(all::add);
        // A hot bath from which nothing followed was a warning in time.
        if (!all.isEmpty()) {
            Instant last = all.stream().map(Cause::at).max(Instant::compareTo).orElseThrow();
            bathHot.filter(b -> b.at().isBefore(last)).ifPresent(all::add);
        }
        seedLost.ifPresent(all::add);
        return all;
    }

    private static Optional<Cause> late(Over o, double workHigh, Duration reaction) {
        Optional<Cue> cue = o.lift().flatMap(Off::cue).or(o::cue);
        boolean onBath = o.lift().isPresent() || o.cue().isPresent();
        if (!onBath) return Optional.empty();
        Instant lifted = o.lift().map(Off::at).orElse(o.until());
        if (cue.isPresent()) {
            Duration after = Duration.between(cue.get().at().plus(reaction), lifted);
            if (after.compareTo(LATE) > 0) {
                Instant at = cue.get().at().plus(reaction);
                return Optional.of(byCue(cue.get(), o.phase(), after, o.highestCelsius(), workHigh, at));
            }
        }
        if (o.lift().isEmpty()) return Optional.empty();
        Off off = o.lift().get();
        // While it is worked, warm air of which nobody told looks like a bath.
        if (off.phase() == Phase.WORK && cue.isEmpty()) return Optional.empty();
        // How much earlier the same curve would have stayed below, by its rate at the lift.
        double rate = Math.max(0.005, off.kelvinPerSecond());
        double seconds = (o.highestCelsius() - workHigh) / rate;
        if (seconds * 1000 < LATE.toMillis()) return Optional.empty();
        Duration by = Duration.ofMillis(Math.round(1000 * Math.min(600, seconds)));
        Cause cause = Cause.of(Kind.LIFTED_LATE, off.phase(), off.at().minus(by))
                .reaching(o.highestCelsius())
                .against(workHigh)
                .by(by);
        return Optional.of(
                cue.isPresent() ? cause.told(cue.get().id().word(), cue.get().at()) : cause);
    }
}
