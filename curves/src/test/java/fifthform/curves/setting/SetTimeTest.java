package fifthform.curves.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times to set and to stay closed, against the computed rows of this project's table of setting. */
class SetTimeTest {
    /** The six rows "computed time to set, 8 mm bar" of setting_and_storage.csv. */
    @ParameterizedTest
    @CsvSource({
        "8, STILL, 25.2",
        "12, STILL, 33.7",
        "15, STILL, 45.8",
        "12, MOVING, 13.5",
        "15, MOVING, 18.3",
        "20, STILL, 62.2"
    })
    void theRowsOfTheTableAreReached(double airCelsius, SetTime.Air air, double minutes) {
        assertEquals(minutes, SetTime.of(8, airCelsius, air).orElseThrow().toSeconds() / 60.0, 0.06);
    }

    @Test
    void whereItIsTooWarmNothingSets() {
        assertEquals(Optional.empty(), SetTime.of(8, 24.5, SetTime.Air.STILL));
    }

    @Test
    void theFridgeNeverKeepsThemLongerThanTwentyMinutesAndTheRoomWaitsUntilTheyAreSet() {
        SetPlan fridge =
                SetPlan.of(CoolingPlace.FRIDGE, OptionalDouble.empty(), SetTime.Air.STILL, 14, Optional.empty());
        assertEquals(Duration.ofMinutes(20), fridge.longest());
        assertTrue(fridge.look().compareTo(fridge.longest()) <= 0);
        SetPlan room = SetPlan.of(CoolingPlace.ROOM, OptionalDouble.of(20), SetTime.Air.STILL, 8, Optional.empty());
        assertEquals(room.toSet().orElseThrow(), room.look());
    }

    /** Row D11 of dew_point.csv: room air 22 °C at 55 % met by a bar out of a 12 °C place: 12 is below 12.54, it wets. */
    @Test
    void aBarOutOfTwelveDegreesWetsInTheRoomOfRowElevenAndStaysClosed() {
        Condensation room = Condensation.in(22, 55);
        assertEquals(12.54062302466037, room.dewCelsius(), 1e-9);
        assertTrue(room.wets(12));
        assertFalse(room.wets(13.6));
        long minutes = room.closedFor(12, 8).orElseThrow().toMinutes();
        assertTrue(minutes >= 3 && minutes <= 30, minutes + " min");
        assertTrue(room.closedFor(5, 8).orElseThrow().toMinutes() > minutes);
        assertTrue(room.closedFor(5, 16)
                        .orElseThrow()
                        .compareTo(room.closedFor(5, 8).orElseThrow())
                > 0);
        assertEquals(Duration.ZERO, room.closedFor(18, 8).orElseThrow());
    }

    /** Row D12: 30 °C at 80 %, dew point 26.2 °C; and a room so damp that nothing cold may ever be opened in it. */
    @Test
    void inATropicalKitchenItTakesLongAndInAWetOneForEver() {
        Condensation tropical = Condensation.in(30, 80);
        assertTrue(tropical.closedFor(10, 8).orElseThrow().toMinutes() > 45);
        assertEquals(Optional.empty(), Condensation.in(25, 97).closedFor(10, 8));
    }
}
