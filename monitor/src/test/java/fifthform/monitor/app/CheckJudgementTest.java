package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.probecheck.AirPressure;
import fifthform.curves.probecheck.Curve;
import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.settings.Units;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.link.TapeSource;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What points mean for a probe that is known already, and what is kept of it. */
class CheckJudgementTest {
    private static final Instant DAY = Instant.parse("2026-01-01T09:00:00Z");
    private static final Sensor SENSOR =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MCP9600);
    private static final Correction BEFORE =
            new Correction(1, -0.2, 0.17, Optional.of(DAY.minus(Duration.ofDays(100))));
    private static final AirPressure AIR = AirPressure.from(
                    OptionalDouble.empty(), OptionalDouble.of(1000), OptionalDouble.empty())
            .fold(air -> air, problems -> fail(problems.toString()));

    @TempDir
    Path folder;

    @Test
    void aDriftIsSaidAndShortensTheTimeToTheNextCheck() throws Exception {
        CheckSubject subject = subject(CheckSubject.Kind.REAL);
        CheckOutcome outcome = judgement(subject).ofIce(ice(0.9));
        String words = words(subject, outcome);
        assertTrue(words.contains("Against the last check, 2025-09-2"), words);
        assertTrue(words.contains("it has drifted"), words);
        assertTrue(words.contains("Check again by 2026-01-31"), words);
    }

    @Test
    void withoutADriftTheUsualTimeHolds() throws Exception {
        CheckSubject subject = subject(CheckSubject.Kind.REAL);
        String words = words(subject, judgement(subject).ofIce(ice(0.25)));
        assertTrue(words.contains("no drift"), words);
        assertTrue(words.contains("Check again by 2026-06-30"), words);
    }

    /** A type set wrongly reads right in ice and far off in boiling water: the ice point must not hide that. */
    @Test
    void aBoilThatDoesNotFitStopsTheIcePointToo() throws Exception {
        CheckSubject subject = subject(CheckSubject.Kind.REAL);
        CheckOutcome outcome = judgement(subject).ofBoth(ice(0), boil(-2.5), AIR);
        assertFalse(outcome.isPassed());
        assertTrue(outcome.finding().isEmpty());
        assertTrue(words(subject, outcome).contains("does not fit"));
    }

    @Test
    void aCheckThatIsNotPassedIsKeptAndChangesNothing() throws Exception {
        CheckSubject subject = subject(CheckSubject.Kind.REAL);
        CheckKeeper keeper = new CheckKeeper(new Adapters(folder));
        keeper.keep(subject, judgement(subject).ofIce(ice(0.4)), DAY);
        keeper.keep(subject, judgement(subject).ofIce(ice(4.5)), DAY.plusSeconds(60));
        var kept = new Adapters(folder).load().adapters().get(0);
        assertEquals(2, kept.checks().size());
        assertEquals(4.5, kept.checks().get(1).points().get(0).readCelsius());
        KnownProbe probe = kept.probe(0).orElseThrow();
        assertEquals(-0.4, probe.correction().offsetKelvin());
        assertEquals(SENSOR, probe.sensor());
    }

    @Test
    void practiceIsNeverKept() throws Exception {
        CheckSubject subject = subject(CheckSubject.Kind.PRACTICE);
        CheckKeeper keeper = new CheckKeeper(new Adapters(folder.resolve("probes")));
        assertEquals(Optional.empty(), keeper.keep(subject, judgement(subject).ofIce(ice(0.4)), DAY));
        assertFalse(folder.resolve("probes").toFile().exists());
    }

    private static String words(CheckSubject subject, CheckOutcome outcome) {
        CheckDesk desk = CheckDesk.lines(new PrintWriter(Writer.nullWriter()), Units.CELSIUS);
        return String.join("\n", new CheckReport(subject, desk).words(outcome));
    }

    private static CheckJudgement judgement(CheckSubject subject) {
        return new CheckJudgement(subject, 0, Curve.AS_READ);
    }

    private static Point ice(double readCelsius) {
        return new Point(DAY, Target.ice(), readCelsius, 0.01, 80);
    }

    private static Point boil(double offKelvin) {
        Target target = Target.boil(AIR);
        return new Point(DAY.plusSeconds(300), target, target.trueCelsius() + offKelvin, 0.02, 80);
    }

    private static CheckSubject subject(CheckSubject.Kind kind) throws Refusal {
        return new CheckSubject(
                kind,
                "/dev/ttyDEMO",
                TapeSource.lines("none", new byte[0], DAY, Duration.ofSeconds(1)),
                Protocols.named(Protocols.TEXT),
                Optional.empty(),
                OptionalInt.empty(),
                SENSOR,
                Optional.empty(),
                BEFORE,
                target -> {},
                () -> {});
    }
}
