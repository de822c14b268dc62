package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Fat;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A cup's time constant from melted chocolate. */
class TauFitTest {
    @Test
    void aPlainExponentialGivesItsOwn() {
        List<CurvePoint> points = new ArrayList<>();
        for (int t = 0; t < 700; t++)
            points.add(new CurvePoint(t, 0.5 + 33.5 * StrictMath.exp(-Math.max(0, t - 20) / 234.0)));
        TauFit fit = fit(points, 0.5);
        assertEquals(3.9, fit.tauMinutes(), 0.01);
        // The fall is taken for seen 7 s late; of a lump it is seen 2 s late.
        assertEquals(StrictMath.exp(5 / 234.0), fit.axisExcess(), 0.015);
        assertEquals(0, fit.scatterKelvin(), 0.01);
    }

    /**
     * Rings whose axis stays behind by a fifth. Their fall shows later, so the line drawn back says little of it; from 30 °C
     * on their shape has not quite settled, so the time is a little long.
     */
    @Test
    void aLateAxisShows() {
        CupTraits late = new CupTraits(4, 1.2);
        List<CurvePoint> points = Samples.read(ReferenceTube.of(Fat.DARK, late, 0), 0, 1, 0.03, 0.01, 1);
        TauFit fit = fit(points, 0);
        assertEquals(4, fit.tauMinutes(), 0.4);
        assertTrue(fit.axisExcess() > 1.04, fit.toString());
    }

    private static TauFit fit(List<CurvePoint> points, double bath) {
        CoolingCurve curve = Samples.curve(points);
        return TauFit.of(curve, Course.of(curve, bath).orElseThrow(), bath).orElseThrow();
    }
}
