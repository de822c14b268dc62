package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.StirWatch;
import fifthform.curves.crystal.Temper;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stirring as the readings show it, in batches of the home fleet that nobody tuned it on ({@code -Dstirred=N} for more). */
class StirringSeenTest {
    private static final int BATCHES = Integer.getInteger("stirred", 24);

    @Test
    void whatIsSaidOfTheSpoonIsRightInFourMinutesOfFive() {
        Fleet home = Fleet.builtIn(Fleet.HOME).withSeed(62);
        StirringSeen all = StirringSeen.in(home, 0, BATCHES, Optional.empty());
        System.out.println("stirring, home fleet: " + all.words());
        if (BATCHES > 24) {
            for (Spot spot : new Spot[] {Spot.COLD_WATER, Spot.TABLE, Spot.WARM_BATH}) {
                System.out.println("  " + spot + ": "
                        + StirringSeen.in(home, 0, BATCHES, Optional.of(spot)).words());
            }
        }
        assertTrue(all.rightFraction() >= 0.8, all.words());
        assertTrue(all.minutes() > 100, all.words());
    }

    /** Slow cooling is no spoon: of a bowl that nobody ever stirs the readings must not say that it is stirred. */
    @Test
    void nobodyIsSaidToStirABowlLeftAlone() {
        Scenario scenario = Scenarios.builtIn().find("no-stirring").fold(s -> s, problems -> {
            throw new AssertionError(problems.toString());
        });
        Fleet.Advice engine = Fleet.Advice.engine(RecipeShelf::recipe);
        Moment moment = Batch.beginning(scenario, new Luck(39), engine.program(scenario, engine.recipe(scenario)));
        Batch batch = new Batch(scenario.kitchen());
        while (!moment.maker().done()) moment = batch.next(moment).after();
        Temper temper = ((EngineProgram) moment.program()).state().crystals().orElseThrow();
        StirWatch stir = temper.stir();
        assertFalse(stir.stirring() == Stirring.STIRRED && stir.isSeen(), stir.toString());
        assertNotEquals(Optional.of(SeedWord.ENOUGH), temper.watch().spoken().word());
    }
}
