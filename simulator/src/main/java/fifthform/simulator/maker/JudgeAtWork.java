package fifthform.simulator.maker;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Asked.Act;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One look of a {@link Judge} at the kitchen and what the hands then do. Lives within one {@link Judge#next}. */
final class JudgeAtWork {
    /** Out of the cold water so many seconds early: what these hands learned about cold on its way. Our own choice. */
    private static final double OUT_OF_THE_COLD_EARLY_SECONDS = 20;

    /** Still so far above a minute after, it goes back, K. Our own choice. */
    private static final double STILL_WARM_KELVIN = 0.8;

    private static final Duration STILL_WARM_AFTER = Duration.ofSeconds(60);

    /** Half of all wipe the bowl, after this. Invented. */
    private static final double WIPES_FRACTION = 0.5;

    private static final Duration WIPES_AFTER = Duration.ofSeconds(20);

    /** So long the bowl stands on the table after the last lift before the batch is over. Thick glass takes two minutes. */
    private static final Duration SETTLES = Duration.ofMinutes(4);

    /** Where a holder keeps the bowl above the low end of the range, K: puts it back below, aims at the other. */
    private static final double PUTS_BACK_ABOVE_KELVIN = 0.15;

    private static final double AIMS_ABOVE_KELVIN = 0.6;
    private static final Duration WAITS_TO_BE_ASKED = Duration.ofMinutes(3);
    private static final Duration STEADY = Duration.ofMinutes(60);

    private final Judge judge;
    private final KitchenView view;
    private final Instant at;
    private final List<BowlMoved> keys;
    private Course course;
    private Spoon spoon;
    private Distractions distractions;
    private List<Asked> asked;
    private Touching touching;
    private Optional<Instant> warmSince;
    private Optional<Instant> wipeAt;
    private Luck luck;

    JudgeAtWork(Judge judge, KitchenView view) {
        this.judge = judge;
        this.view = view;
        at = view.at();
        keys = new ArrayList<>(judge.keys());
        course = judge.course();
        spoon = judge.spoon();
        distractions = judge.distractions();
        asked = judge.asked();
        touching = judge.touching();
        warmSince = judge.warmSince();
        wipeAt = judge.wipeAt();
        luck = judge.luck();
    }

    Next next() {
        if (course.stageSince().isEmpty()) moveTo(course.begin(at, Stage.MELTING));
        distractions = distractions.at(at);
        moveTo(course.visitOver(at));
        if (warmSince.isPresent()) touching = touching.seen(at, shown());
        doWhatIsAsked();
        goOn();
        Towel towel = wipe();
        spoon = spoon.at(at);
        List<Input> presses = pressed();
        Probe probe = distractions.probeOut(at) ? Probe.OUT : Probe.IN_THE_CHOCOLATE;
        Hands hands = new Hands(course.spot(), spoon.vigourFraction(), towel, Blower.OFF, distractions.unnoticed(at));
        return new Next(after(), new Acts(hands, probe, 0, 0, 0, presses));
    }

    private Judge after() {
        return new Judge(
                judge.rewarm(),
                judge.habits(),
                course,
                spoon,
                distractions,
                asked,
                keys,
                touching,
                judge.glance().noted(at, shown()),
                warmSince,
                wipeAt,
                judge.screen(),
                luck);
    }

    private List<Input> pressed() {
        if (keys.isEmpty()) return List.of();
        List<Input> now = new ArrayList<>(1);
        keys.removeIf(key -> !key.at().isAfter(at) && now.add(key));
        return now;
    }

    /** A course as it should be, with the rewarm over the water that was chosen for it. */
    private void moveTo(Course next) {
        Spot from = course.spot();
        Course going = next;
        if (going.stage() == Stage.WARMING && going.spot() == Spot.WARM_BATH && water() != Spot.WARM_BATH) {
            going = going.standingAt(water());
        }
        course = going;
        if (from == going.spot()) return;
        spoon = spoon.keptOn(at);
        distractions = distractions.stoodAt(at, going.stage() == Stage.WARMING ? Spot.WARM_BATH : going.spot());
        boolean wipes = going.spot() == Spot.TABLE && chance() < WIPES_FRACTION;
        wipeAt = wipes ? Optional.of(at.plus(WIPES_AFTER)) : Optional.empty();
        tell(going.spot());
    }

    private void tell(Spot to) {
        Luck drawn = luck;
        luck = luck.after().after();
        if (!judge.rewarm().keys().pressed(drawn)) return;
        keys.add(new BowlMoved(at.plus(judge.rewarm().keys().after(drawn.after())), place(to)));
    }

    private Spot water() {
        return judge.rewarm().water();
    }

    private void doWhatIsAsked() {
        if (asked.isEmpty()) return;
        List<Asked> left = new ArrayList<>(asked);
        left.removeIf(each -> {
            if (at.isBefore(each.due()) || each.act() == Act.STIR_ON) return false;
            carryOut(each);
            return true;
        });
        asked = left;
    }

    private void carryOut(Asked each) {
        boolean warming = course.stage() == Stage.WARMING;
        boolean settling = course.stage() == Stage.SETTLING;
        switch (each.act()) {
            case LIFT -> {
                if (warming) moveTo(course.begin(at, Stage.SETTLING));
                else if (settling) moveTo(course.backOnTable(at));
            }
            case PUT_BACK -> {
                if (settling && course.spot() == Spot.TABLE) touch(each.time());
                else if (course.stage() == Stage.HOLDING) beginRewarmByTouch(each.time());
            }
            case BACK_INTO_THE_COLD -> {
                if (course.stage() == Stage.HOLDING) moveTo(course.visit(at, Spot.COLD_WATER, each.time()));
            }
            case STIR_ON -> {}
            case POUR -> {
                if (settling && course.spot() == Spot.TABLE) moveTo(course.begin(at, Stage.POURING));
            }
        }
    }

    private void touch(Duration time) {
        touching = touching.begun(shown());
        moveTo(course.visit(at, water(), time));
    }

    private void goOn() {
        Habits habits = judge.habits();
        Duration lasted = course.inStageFor(at);
        boolean outOfPatience = lasted.compareTo(course.stage().patience()) >= 0;
        switch (course.stage()) {
            case MELTING -> {
                if (outOfPatience || shown() >= habits.meltedCelsius()) moveTo(course.begin(at, Stage.COOLING));
            }
            case COOLING -> {
                double falling = Math.max(0, -judge.glance().kelvinPerSecond(at, shown()));
                boolean cool = shown() - OUT_OF_THE_COLD_EARLY_SECONDS * falling <= habits.coolCelsius();
                if (outOfPatience || cool) moveTo(course.begin(at, Stage.HOLDING));
            }
            case HOLDING -> {
                boolean warm = shown() > habits.coolCelsius() + STILL_WARM_KELVIN;
                if (warm && onTheTableFor(STILL_WARM_AFTER)) moveTo(course.begin(at, Stage.COOLING));
                else if (lasted.compareTo(habits.hold().plus(waits())) >= 0 && !stirsOn()) beginRewarm();
            }
            case WARMING -> {
                if (lasted.compareTo(longest()) >= 0 || farPast()) moveTo(course.begin(at, Stage.SETTLING));
            }
            case SETTLING -> settle();
            case POURING -> {
                if (lasted.compareTo(SETTLES) >= 0) moveTo(course.begin(at, Stage.GONE));
            }
            case GONE -> {}
        }
    }

    /** Who is told how long crystals still need gives them that, and then waits to be asked. */
    private boolean stirsOn() {
        for (Asked each : asked) {
            Duration time = each.time().plus(WAITS_TO_BE_ASKED);
            if (each.act() == Act.STIR_ON && at.isBefore(each.due().plus(time))) return true;
        }
        return false;
    }

    /** Who goes by touches waits to be asked for the first; who waits in vain begins without. */
    private Duration waits() {
        return judge.rewarm().manner() == Manner.TOUCHES ? WAITS_TO_BE_ASKED : Duration.ZERO;
    }

    private void beginRewarmByTouch(Duration time) {
        warmSince = Optional.of(at);
        moveTo(course.begin(at, Stage.SETTLING));
        touch(time);
    }

    private void beginRewarm() {
        warmSince = Optional.of(at);
        touching = touching.begun(shown());
        moveTo(course.begin(at, Stage.WARMING));
    }

    /** Who holds by the thermometer begins with a short touch as well. */
    private Duration longest() {
        return judge.rewarm().manner() == Manner.STEADY
                ? Duration.ofMillis(Math.round(1000 * touching.seconds()))
                : judge.rewarm().patience();
    }

    private boolean farPast() {
        return shown() >= judge.rewarm().lowCelsius() + Rewarm.LEAVES_AT_KELVIN;
    }

    private void settle() {
        Duration warm = Duration.between(warmSince.orElse(at), at);
        switch (judge.rewarm().manner()) {
            case ONE_LIFT, STAYS_ON -> {
                if (onTheTableFor(SETTLES)) moveTo(course.begin(at, Stage.GONE));
            }
            case TOUCHES -> {
                boolean tired = warm.compareTo(judge.rewarm().patience()) >= 0 && course.spot() == Spot.TABLE;
                if (tired && asked.stream().allMatch(a -> a.act() == Act.STIR_ON))
                    moveTo(course.begin(at, Stage.POURING));
            }
            case STEADY -> {
                hold();
                if (warm.compareTo(STEADY) >= 0) moveTo(course.begin(at, Stage.GONE));
            }
        }
    }

    private boolean onTheTableFor(Duration time) {
        return course.spot() == Spot.TABLE
                && course.movedAt().filter(m -> !at.isBefore(m.plus(time))).isPresent();
    }

    private void hold() {
        double low = judge.rewarm().lowCelsius();
        if (course.spot() != Spot.TABLE || !touching.passed(at) || shown() > low + PUTS_BACK_ABOVE_KELVIN) return;
        touching = touching.next(low + AIMS_ABOVE_KELVIN - shown());
        touch(Duration.ofMillis(Math.round(1000 * touching.seconds())));
    }

    private Towel wipe() {
        if (wipeAt.isEmpty() || at.isBefore(wipeAt.get())) return Towel.LEFT;
        wipeAt = Optional.empty();
        return Towel.WIPING;
    }

    private double shown() {
        return view.shownCelsius().orElse(Double.NaN);
    }

    private double chance() {
        double drawn = luck.uniform();
        luck = luck.after();
        return drawn;
    }

    private static Place place(Spot spot) {
        if (spot == Spot.HOT_BATH || spot == Spot.WARM_BATH) return Place.BATH;
        return spot == Spot.COLD_WATER ? Place.COLD_WATER : Place.TABLE;
    }
}
