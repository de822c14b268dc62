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
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.session.Altered;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import fifthform.monitor.terminal.LineScreen;
import java.time.Duration;
import java.time.ZoneOffset;
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
                Optional.of("this behaves like a heavier bowl than “steel, 1 kg”"), BowlLine.notice(STEEL, heavier));
        assertEquals(
                "another bowl than “steel, 1 kg”? what that one taught is set aside",
                BowlLine.of(STEEL, heavier, Units.CELSIUS));
        assertEquals(Optional.empty(), BowlLine.notice(STEEL, coasting(3, Optional.empty())));
    }

    /** It is no alarm and takes nobody's headline, but it stands in their row until I or the end. */
    @Test
    void theNoticeStandsBesideTheAlarms() {
        SessionSnapshot s =
                Tapes.first(Tapes.UNPLUGGED, one -> one.state().forecast().isPresent());
        WatchPicture usual = picture(s);
        WatchPicture strange =
                picture(Altered.with(s, Altered.with(s.state(), coasting(3, Optional.of(OtherBowl.LIGHTER)))));
        assertEquals(List.of(), usual.alarms());
        AlarmRow row = strange.alarms().get(0);
        assertTrue(row.words().startsWith("this behaves like a lighter bowl than “"), row.words());
        assertEquals("key I: it is the bowl", row.state());
        assertTrue(strange.isInTheRow(Key.IT_IS_THE_BOWL) && !usual.isInTheRow(Key.IT_IS_THE_BOWL));
        assertTrue(strange.foot().contains("what that one taught is set aside"), strange.foot());
        assertEquals(usual.band().tone(), strange.band().tone());
        String said = String.join(
                "\n",
                LineScreen.START
                        .next(usual, Duration.ZERO)
                        .after()
                        .next(strange, Duration.ofSeconds(1))
                        .lines());
        assertTrue(said.contains("advise: this behaves like a lighter bowl than "), said);
    }

    private static WatchPicture picture(SessionSnapshot snapshot) {
        return WatchModel.picture(
                snapshot, new Look(Units.CELSIUS, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty()));
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
