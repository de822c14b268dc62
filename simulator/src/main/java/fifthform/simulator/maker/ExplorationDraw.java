package fifthform.simulator.maker;

import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Stay.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Draws an {@link Exploration}; every number in here is invented, to be wider than any sensible batch. */
final class ExplorationDraw {
    private static final double LONGEST_MELT_SECONDS = 600;
    private static final double LONGEST_COOLING_SECONDS = 540;

    private final Habits habits;
    private final Dice dice;
    private final List<Stay> stays = new ArrayList<>();

    private ExplorationDraw(Habits habits, Dice dice) {
        this.habits = habits;
        this.dice = dice;
    }

    static Exploration of(Habits habits, Luck luck) {
        ExplorationDraw draw = new ExplorationDraw(habits, new Dice(luck));
        draw.melt();
        draw.cool();
        Spot rewarm = draw.dice.happens(0.3) ? Spot.HOT_BATH : Spot.WARM_BATH;
        draw.warm(rewarm);
        Stirring stirring = draw.stirring();
        List<Spell> spells = draw.spells();
        double seedGrams = draw.dice.happens(0.25) ? habits.plan().seedGrams() : 0;
        return new Exploration(
                draw.stays,
                rewarm,
                stirring,
                spells,
                draw.dice.happens(0.5) ? draw.dice.between(0, 1) : 0,
                Duration.ofMillis(Math.round(1000 * draw.dice.between(3, 40))),
                seedGrams,
                habits.plan().seedAtCelsius());
    }

    private void melt() {
        double melted = habits.meltedCelsius();
        if (dice.happens(0.15)) {
            stays.add(Stay.until(Spot.HOT_BATH, Kind.RISEN_TO, dice.between(34, melted), LONGEST_MELT_SECONDS));
            stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(10, 120)));
        }
        stays.add(Stay.until(Spot.HOT_BATH, Kind.RISEN_TO, melted, LONGEST_MELT_SECONDS));
        if (dice.happens(0.6)) stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(10, 240)));
    }

    private void cool() {
        double cool = habits.coolCelsius() + dice.between(-1.5, 3);
        Spot where = dice.happens(0.08) ? Spot.TABLE : Spot.COLD_WATER;
        int goes = dice.happens(0.7) ? 1 : 2 + dice.among(3);
        for (int go = 1; go < goes; go++) {
            stays.add(Stay.until(where, Kind.FALLEN_TO, cool, dice.logBetween(5, 90)));
            stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(8, 90)));
        }
        stays.add(Stay.until(where, Kind.FALLEN_TO, cool, LONGEST_COOLING_SECONDS));
        stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(20, 300)));
        if (dice.happens(0.15)) {
            stays.add(Stay.seconds(Spot.COLD_WATER, dice.logBetween(4, 25)));
            stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(20, 180)));
        }
    }

    /** One to seven dips; a bowl that has become far too warm goes into cold water in between. */
    private void warm(Spot water) {
        double warm = habits.warmCelsius();
        int dips = 1 + dice.among(7);
        for (int dip = 0; dip < dips; dip++) {
            // Half begin as a maker does who means to lift once.
            stays.add(dip == 0 && dice.happens(0.5) ? lift(water, warm) : dip(water, warm));
            stays.add(Stay.seconds(Spot.TABLE, rest(dip == dips - 1)));
            if (dice.happens(0.7)) {
                double back = warm - dice.between(0.5, 4.5);
                stays.add(Stay.until(Spot.COLD_WATER, Kind.FALLEN_TO, back, 180)
                        .onlyAbove(warm + dice.between(-0.5, 2.5)));
                stays.add(Stay.seconds(Spot.TABLE, dice.logBetween(15, 180)).onlyAbove(warm + 0.5));
            }
        }
        stays.add(Stay.seconds(Spot.TABLE, dice.between(30, 120)));
    }

    private double rest(boolean last) {
        if (last) return dice.between(100, 180);
        return dice.happens(0.15) ? dice.between(3, 12) : dice.logBetween(10, 180);
    }

    /** To a number near the working range, now and then far past it. */
    private Stay lift(Spot water, double warm) {
        double past = dice.happens(0.25) ? dice.between(1.5, 4.5) : dice.between(-2.5, 1.5);
        return Stay.until(water, Kind.RISEN_TO, warm + past, 300);
    }

    /** A touch, a lift at a number, far too long, or a little warmer than now. */
    private Stay dip(Spot water, double warm) {
        double kind = dice.between(0, 1);
        if (kind < 0.35) return Stay.seconds(water, dice.logBetween(3, 25));
        if (kind < 0.65) return Stay.until(water, Kind.RISEN_TO, warm + dice.between(-3, 2.5), 240);
        if (kind < 0.72) return Stay.until(water, Kind.RISEN_TO, warm + dice.between(1.5, 5), 300);
        if (kind < 0.88) return Stay.until(water, Kind.RISEN_BY, dice.between(0.2, 3), 240);
        return Stay.seconds(water, dice.logBetween(15, 240));
    }

    private Stirring stirring() {
        double kind = dice.between(0, 1);
        double vigour = dice.between(0.4, 1);
        double spread = dice.between(0, 0.25);
        double bout = dice.logBetween(8, 120);
        double pause = dice.logBetween(4, 60);
        Duration afterAMove = Duration.ofMillis(Math.round(1000 * dice.between(0, 60)));
        if (kind < 0.08) return new Stirring(0, 0, 600, 600, Duration.ZERO);
        if (kind < 0.2) return new Stirring(vigour, spread, 600, 1, afterAMove);
        return new Stirring(vigour, spread, bout, pause, afterAMove);
    }

    /** Out of the chocolate in a fifth of all sessions, at the wall for some time in a quarter. */
    private List<Spell> spells() {
        List<Spell> all = new ArrayList<>();
        if (dice.happens(0.2)) some(all, 1 + dice.among(4), ProbePlace.OUT, 5, 25);
        if (dice.happens(0.25)) some(all, 1 + dice.among(5), ProbePlace.AT_WALL, 8, 60);
        return all;
    }

    private void some(List<Spell> all, int count, ProbePlace place, double low, double high) {
        for (int i = 0; i < count; i++) {
            double from = dice.between(60, 1800);
            all.add(new Spell(from, from + dice.logBetween(low, high), place));
        }
    }
}
