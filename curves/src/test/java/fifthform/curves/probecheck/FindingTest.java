package fifthform.curves.probecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Parsed;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Corrections against probes whose errors are known, because they were made up. */
class FindingTest {
    private static final Instant AT = Instant.parse("2026-01-01T09:00:00Z");
    private static final Sensor CLASS_1 =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MCP9600);
    private static final Target BOIL =
            Target.boil(AirPressure.from(OptionalDouble.empty(), OptionalDouble.of(1000), OptionalDouble.empty())
                    .fold(air -> air, problems -> fail(problems.toString())));
    private static final int TRIALS = 2000;

    @Test
    void onePointTakesTheOffsetAway() {
        Correction c =
                accepted(Finding.onePoint(ice(0.8), CLASS_1, Curve.AS_READ)).correction();
        assertEquals(31.5, c.apply(32.3), 1e-9);
        assertEquals(1, c.gain());
        assertEquals(Optional.of(AT), c.checkedAt());
    }

    @Test
    void twoPointsTakeGainAndOffsetAway() {
        Point boil = point(BOIL, 1.012 * BOIL.trueCelsius() - 0.5);
        Correction c = accepted(Finding.twoPoints(ice(-0.5), boil, CLASS_1, Curve.AS_READ))
                .correction();
        assertEquals(31.5, c.apply(1.012 * 31.5 - 0.5), 1e-9);
    }

    /** This project's reference tables: a careless boil hands 31 % of its error down to 31 °C. */
    @Test
    void aWrongBoilHandsAThirdOfItsErrorDown() {
        Correction right = accepted(Finding.twoPoints(ice(0), point(BOIL, BOIL.trueCelsius()), CLASS_1, Curve.AS_READ))
                .correction();
        Correction wrong = accepted(
                        Finding.twoPoints(ice(0), point(BOIL, BOIL.trueCelsius() - 1), CLASS_1, Curve.AS_READ))
                .correction();
        assertEquals(0.31, wrong.apply(31) - right.apply(31), 0.005);
    }

    /** The same tables: unchecked 1 K, and 0.2 to 0.3 K after ice and boiling point; the worked figures are our own. */
    @Test
    void theDoubtThatIsLeftIsTheSumOfItsParts() {
        Finding one = accepted(Finding.onePoint(ice(0.3), CLASS_1, Curve.AS_READ));
        Finding two = accepted(Finding.twoPoints(ice(0.3), point(BOIL, BOIL.trueCelsius()), CLASS_1, Curve.AS_READ));
        Finding vague = accepted(Finding.onePoint(ice(0.3), Sensor.UNKNOWN, Curve.AS_READ));
        // 0.05 and 0.01 by ice and mean, 0.004 * 31.5 / sqrt(3) by the wire, 0.15 by the junction.
        double wire = 0.004 * 31.5 / Math.sqrt(3);
        assertEquals(
                Math.sqrt(0.05 * 0.05 + 0.01 * 0.01 + wire * wire + 0.15 * 0.15),
                one.correction().sigmaKelvin(),
                1e-9);
        assertTrue(two.correction().sigmaKelvin() < one.correction().sigmaKelvin());
        // The weight of the boiling point at 31.5 °C, worked by hand: 31.5 / 99.606 = 0.31625.
        double ice = (1 - 0.31625) * Math.hypot(0.05, 0.01);
        double boil = 0.31625 * Math.hypot(BOIL.sigmaKelvin(), 0.01);
        assertEquals(
                Math.sqrt(ice * ice + boil * boil + 0.05 * 0.05 + 0.15 * 0.15),
                two.correction().sigmaKelvin(),
                1e-6);
        assertTrue(two.correction().sigmaKelvin() > 0.15 && two.correction().sigmaKelvin() < 0.3);
        // cold_junction.csv of the reference: a straight chip reads 0.767 at 0 °C and 31.399 at 31.5 °C, so 0.869
        // apart.
        double chip = vague.parts().stream()
                .filter(part -> part.source() == Part.Source.CHIP)
                .findFirst()
                .orElseThrow()
                .standardKelvin();
        assertEquals((0.7670 - (31.3986 - 31.5)) / Math.sqrt(3), chip, 0.001);
        assertTrue(vague.correction().sigmaKelvin() < Correction.UNCHECKED.sigmaKelvin());
    }

    /** Once its slope is undone, a converter with one slope leaves no more doubt than one that linearises. */
    @Test
    void aKnownConverterLeavesLessDoubt() {
        Sensor straight = new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MAX31855);
        double undone = sigma(Finding.onePoint(ice(0.3), straight, Curve.UNDONE));
        double asRead = sigma(Finding.onePoint(ice(0.3), straight, Curve.AS_READ));
        assertEquals(sigma(Finding.onePoint(ice(0.3), CLASS_1, Curve.AS_READ)), undone, 1e-12);
        assertTrue(asRead > 0.869, "the whole error is left: " + asRead);
        Point boil = point(BOIL, BOIL.trueCelsius());
        assertTrue(sigma(Finding.twoPoints(ice(0.3), boil, straight, Curve.AS_READ)) < asRead);
    }

    private static double sigma(Parsed<Finding> found) {
        return accepted(found).correction().sigmaKelvin();
    }

    /** In 95 of 100 made-up probes the truth at 31.5 °C lies within two standard uncertainties. */
    @Test
    void theTruthLiesWithinTheStatedDoubt() {
        SplittableRandom random = new SplittableRandom(20260101);
        int withinOne = 0;
        int withinTwo = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Made probe = Made.by(random);
            Point ice = probe.reads(Target.ice(), random);
            Point boil = probe.reads(BOIL, random);
            double read = probe.read(31.5) + 0.15 * normal(random);
            if (covers(accepted(Finding.onePoint(ice, CLASS_1, Curve.AS_READ)).correction(), read)) withinOne++;
            if (covers(
                    accepted(Finding.twoPoints(ice, boil, CLASS_1, Curve.AS_READ))
                            .correction(),
                    read)) withinTwo++;
        }
        assertTrue(withinOne >= 0.95 * TRIALS, withinOne + " after the ice point");
        assertTrue(withinTwo >= 0.95 * TRIALS, withinTwo + " after both points");
    }

    /** The test above must be able to fail: a third of the doubt covers far less. */
    @Test
    void aSmallerDoubtWouldNotHoldTheTruth() {
        SplittableRandom random = new SplittableRandom(20260101);
        int within = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Made probe = Made.by(random);
            Correction c = accepted(Finding.twoPoints(
                            probe.reads(Target.ice(), random), probe.reads(BOIL, random), CLASS_1, Curve.AS_READ))
                    .correction();
            double read = probe.read(31.5) + 0.15 * normal(random);
            if (covers(new Correction(c.gain(), c.offsetKelvin(), c.sigmaKelvin() / 3), read)) within++;
        }
        assertTrue(within < 0.8 * TRIALS, within + "");
    }

    @Test
    void moreThanTheClassAllowsIsRefused() {
        // Class 1 of type K allows 1.5 K, its converter 1.5 K.
        accepted(Finding.onePoint(ice(2.9), CLASS_1, Curve.AS_READ));
        refused(Finding.onePoint(ice(3.3), CLASS_1, Curve.AS_READ));
        refused(Finding.onePoint(ice(-3.3), CLASS_1, Curve.AS_READ));
        Point far = point(BOIL, BOIL.trueCelsius() + 4);
        refused(Finding.twoPoints(ice(0), far, CLASS_1, Curve.AS_READ));
        accepted(Finding.onePoint(ice(3.3), Sensor.UNKNOWN, Curve.AS_READ));
    }

    @Test
    void aBoilWithoutThePressureOfTheDayIsPlausibleOrNot() {
        Target vague =
                Target.boil(AirPressure.from(OptionalDouble.of(500), OptionalDouble.empty(), OptionalDouble.empty())
                        .fold(air -> air, problems -> fail(problems.toString())));
        Correction ice =
                accepted(Finding.onePoint(ice(0.4), CLASS_1, Curve.AS_READ)).correction();
        assertTrue(Boiling.of(point(vague, vague.trueCelsius() + 0.6), ice, CLASS_1, Curve.AS_READ)
                .isPlausible());
        assertFalse(Boiling.of(point(vague, vague.trueCelsius() - 3), ice, CLASS_1, Curve.AS_READ)
                .isPlausible());
    }

    @Test
    void driftIsTheDifferenceWhereItMatters() {
        Correction last = new Correction(1.01, -0.5, 0.15, Optional.of(AT));
        assertEquals(0, Drift.between(last, last).kelvin(), 1e-12);
        Drift drift = Drift.between(last, new Correction(1.01, 0.1, 0.2, Optional.of(AT)));
        assertEquals(0.6, drift.kelvin(), 1e-9);
        assertEquals(0.6 / 0.25, drift.ratio(), 1e-9);
        assertTrue(drift.isSeen());
        assertEquals(AT.plus(Duration.ofDays(30)), CheckAgain.due(AT, Optional.of(drift)));
        assertEquals(AT.plus(Duration.ofDays(180)), CheckAgain.due(AT, Optional.empty()));
    }

    private static boolean covers(Correction correction, double read) {
        return Math.abs(correction.apply(read) - 31.5) <= 2 * correction.sigmaKelvin();
    }

    private static Point ice(double readCelsius) {
        return point(Target.ice(), readCelsius);
    }

    private static Point point(Target target, double readCelsius) {
        return new Point(AT, target, readCelsius, 0.01, 80);
    }

    private static Finding accepted(Parsed<Finding> parsed) {
        return parsed.fold(found -> found, problems -> fail(problems.toString()));
    }

    private static void refused(Parsed<Finding> parsed) {
        String said = parsed.fold(found -> fail("taken: " + found), problems -> problems.toString());
        assertTrue(said.contains("allow"), said);
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** A probe with an offset and a gain of its own, as its class allows. */
    private record Made(double gain, double offsetKelvin) {
        static Made by(SplittableRandom random) {
            return new Made(1 + random.nextDouble(-0.004, 0.004), random.nextDouble(-1.5, 1.5));
        }

        double read(double trueCelsius) {
            return gain * trueCelsius + offsetKelvin;
        }

        /** The pot itself is not quite what it is taken for, as far as its standard uncertainty says. */
        Point reads(Target target, SplittableRandom random) {
            double there = target.trueCelsius() + target.sigmaKelvin() * normal(random);
            return new Point(AT, target, read(there) + 0.01 * normal(random), 0.01, 80);
        }
    }
}
