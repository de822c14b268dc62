package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.BuiltIn;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How long to stir at a temperature. Source: this project's reference for the model, sections 7 and 9: 27.5 °C for 6 min
 * is right and 15 min thick, 28.5 °C needs 12 min, 29 °C 20 min (computed there).
 */
class HoldNeedTest {
    private static final Instant START = Instant.parse("2026-11-26T08:00:00Z");
    private static final double WORK_CELSIUS = 31;
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);

    @ParameterizedTest
    @CsvSource({"27, 4.3, 0.5", "27.5, 6, 0.5", "28.5, 13, 1.5", "29, 23, 3"})
    void depthAndTimeCountAlike(double celsius, double minutes, double within) {
        CrystalWatch cooled = cooled(celsius);
        HoldNeed need = HoldNeed.next(Optional.empty(), cooled, celsius, 20, WORK_CELSIUS, START);
        assertEquals(minutes, need.leftAt(START).orElseThrow().toSeconds() / 60.0, within);
    }

    @Test
    void halfAnHourOnTheWarmSideIsNotEnough() {
        assertTrue(HoldNeed.next(Optional.empty(), cooled(30.5), 30.5, 20, WORK_CELSIUS, START)
                .leftAt(START)
                .isEmpty());
    }

    @Test
    void aQuarterOfAnHourIsThick() {
        Crystals held = Programme.of(0, 45, 12, 27.5, 27, 27.5).run(DARK, Crystals.MELTED, 20);
        assertTrue(held.stableSeed() > Copies.THICK_SEED);
    }

    @Test
    void itCountsDownBetweenTwoReckonings() {
        HoldNeed need = new HoldNeed(START, Optional.of(Duration.ofSeconds(100)));
        assertEquals(Duration.ofSeconds(96), need.leftAt(START.plusSeconds(4)).orElseThrow());
        assertEquals(Duration.ZERO, need.leftAt(START.plusSeconds(200)).orElseThrow());
    }

    private static CrystalWatch cooled(double celsius) {
        CrystalWatch watch = CrystalWatch.solid(DARK).saidMelted();
        Programme down = Programme.of(0, 45, 12, celsius);
        for (int t = 0; t <= 720; t++) {
            watch = watch.read(
                    BuiltIn.recipe("dark"),
                    START.minusSeconds(720 - t),
                    down.celsiusAt(t / 60.0),
                    Circumstances.withoutWall(20),
                    true);
        }
        return watch;
    }
}
