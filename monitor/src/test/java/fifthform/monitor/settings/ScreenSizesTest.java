package fifthform.monitor.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ScreenSizesTest {
    /** ISO/IEC 7810 ID-1 is 85.60 mm by 53.98 mm (from memory). */
    @Test
    void aCardSaysHowLargePixelsAre() {
        ScreenScale scale = ScreenScale.ofCard(428);
        assertEquals(5, scale.pixelsPerMillimetre(), 1e-12);
        assertEquals(9.4, scale.millimetres(47), 1e-12);
        assertEquals(428, scale.cardPixels(), 1e-9);
        for (double wrong : new double[] {0, -3, Double.NaN, Double.POSITIVE_INFINITY})
            assertThrows(IllegalArgumentException.class, () -> ScreenScale.ofCard(wrong));
    }

    /** 16 minutes of arc (ISO 9241-3, as quoted on a display vendor's page) are 2.3, 4.7, 9.3 and 14.0 mm at these distances. */
    @Test
    void lettersGrowWithTheDistance() {
        assertEquals(2.3, ScreenSizes.USUAL.withMetres(0.5).leastMillimetres(), 0.05);
        assertEquals(4.7, ScreenSizes.USUAL.withMetres(1).leastMillimetres(), 0.05);
        assertEquals(9.3, ScreenSizes.USUAL.leastMillimetres(), 0.05);
        assertEquals(14.0, ScreenSizes.USUAL.withMetres(3).leastMillimetres(), 0.05);
    }

    @Test
    void eachScreenHasItsOwnScale() {
        ScreenSizes sizes = ScreenSizes.USUAL.with(ScreenSizes.name(1920, 1080), new ScreenScale(3.6));
        assertEquals(Optional.of(new ScreenScale(3.6)), sizes.of(1920, 1080));
        assertEquals(Optional.empty(), sizes.of(1366, 768));
        assertTrue(sizes.without("1920x1080").scales().isEmpty());
    }
}
