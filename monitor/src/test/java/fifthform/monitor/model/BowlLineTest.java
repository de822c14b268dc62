package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.bowlcheck.Answer;
import fifthform.curves.bowlcheck.BowlWatch;
import fifthform.curves.bowlcheck.BowlWatch.Water;
import fifthform.curves.bowlcheck.BowlWatch.Word;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.forecast.Coast;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is known of the bowl stands on the screen, and that it seems to be another one. */
class BowlLineTest {
    private static final Bowl STEEL = new Bowl("steel", BowlMaterial.STEEL, OptionalDouble.of(1000), Optional.empty());

    @Test
    void aKnownBowlIsToldWithItsLifts() {
        assertEquals(
                "this bowl coasts about 1.1 °C at 1 °C/min, from 3 lifts",
                BowlLine.of(STEEL, coasting(3, Optional.empty()), Units.CELSIUS));
        assertEquals(
                "this bowl coasts about 2.0 °F at 1.8 °F/min, from 1 lift",
                BowlLine.of(STEEL, coasting(1, Optional.empty()), Units.FAHRENHEIT));
    }

    @Test
    void aBowlNotMetBeforeIsAGuess() {
        assertEquals(
                "a bowl not met before: one of steel coasts about 1.1 °C at 1 °C/min",
                BowlLine.of(STEEL, coasting(0, Optional.empty()), Units.CELSIUS));
        assertEquals(
                "a bowl not met before: a usual one coasts about 1.1 °C at 1 °C/min",
                BowlLine.of(Bowl.ANY, coasting(0, Optional.empty()), Units.CELSIUS));
    }

    @Test
    void anotherBowlIsNoticed() {
        Coasting heavier = coasting(3, Optional.of(OtherBowl.HEAVIER));
        assertEquals(
                Optional.of("this behaves like a heavier bowl than \"steel, 1 kg\""), BowlLine.notice(STEEL, heavier));
        assertEquals(
                "another bowl than \"steel, 1 kg\"? what that one taught is set aside",
                BowlLine.of(STEEL, heavier, Units.CELSIUS));
        assertEquals(Optional.empty(), BowlLine.notice(STEEL, coasting(3, Optional.empty())));
    }

    @Test
    void theLineStandsAtTheFoot() {
        SessionSnapshot first =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().coasting().coast().liftsSeen() > 0);
        String foot = WatchModel.picture(
                        first,
                        new Look(
                                Units.CELSIUS,
                                java.time.ZoneOffset.UTC,
                                List.of(),
                                "",
                                Optional.empty(),
                                Optional.empty()))
                .foot();
        assertTrue(foot.matches("this bowl coasts about [0-9.]+ °C at 1 °C/min, from 1 lift · .*prove a sample"), foot);
    }

    private static Coasting coasting(int lifts, Optional<OtherBowl> like) {
        BowlWatch watch = new BowlWatch(
                Optional.empty(),
                List.of(),
                Water.USUAL,
                new Answer(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                like,
                Word.NONE);
        return new Coasting(new Coast(Math.log(66), 0.2, lifts), Optional.empty(), Optional.empty(), 0.7, watch);
    }
}
