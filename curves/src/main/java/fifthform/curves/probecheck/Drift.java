package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Correction;

/**
 * How far a probe has moved since its last check.
 *
 * @param kelvin new corrected value minus the old one where the old said 31.5 °C
 * @param sigmaKelvin combined standard uncertainty of both checks, K, 0 to 10
 */
public record Drift(double kelvin, double sigmaKelvin) {
    public Drift {
        Require.finite(kelvin, "kelvin");
        Require.within(sigmaKelvin, 0, 10, "sigmaKelvin");
    }

    /** The difference between two checks of one probe at working temperature. */
    public static Drift between(Correction last, Correction now) {
        double read = (Finding.WORK_CELSIUS - last.offsetKelvin()) / last.gain();
        double squares = last.sigmaKelvin() * last.sigmaKelvin() + now.sigmaKelvin() * now.sigmaKelvin();
        return new Drift(now.apply(read) - Finding.WORK_CELSIUS, Math.sqrt(squares));
    }

    /** In units of the combined standard uncertainty. */
    public double ratio() {
        return sigmaKelvin > 0 ? Math.abs(kelvin) / sigmaKelvin : kelvin == 0 ? 0 : Double.MAX_VALUE;
    }

    /** No more than one standard uncertainty: as good as none. */
    public boolean isNone() {
        return ratio() <= 1;
    }

    /** More than two standard uncertainties: one in twenty by chance (JCGM 100:2008, G.1.3). */
    public boolean isSeen() {
        return ratio() > 2;
    }
}
