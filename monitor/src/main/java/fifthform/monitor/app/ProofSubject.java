package fifthform.monitor.app;

import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.intake.PacedSource;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.texts.ProofText;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.device.SampleCup;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A probe that samples are proved with.
 *
 * @param probe its line
 * @param takeSample called when the maker is asked to take a sample: a simulated one obeys at once
 * @param takeMelted the same for melted chocolate
 */
record ProofSubject(CheckSubject probe, Runnable takeSample, Runnable takeMelted) {
    private static final double PRACTICE_SPEED = 10;
    /** Any number gives a practice; this one always the same. */
    private static final long PRACTICE_LUCK = 6;

    private static final Sensor PRACTICE_SENSOR =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MCP9600);

    ProofSubject {
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(takeSample, "takeSample");
        Objects.requireNonNull(takeMelted, "takeMelted");
    }

    /** A real or recorded probe: hands obey. */
    static ProofSubject of(CheckSubject probe) {
        return new ProofSubject(probe, () -> {}, () -> {});
    }

    /** An invented cup; {@code name} is {@code practice} or {@code practice:BOWL}. */
    static ProofSubject practice(String name, CheckDesk.Manner manner, WatchSpeed speed) throws Refusal {
        SampleCup cup = new SampleCup(bowl(name), Instant.now(), new SplittableRandom(PRACTICE_LUCK));
        boolean paced = manner == CheckDesk.Manner.AT_A_TERMINAL && !speed.asFastAsPossible();
        LinkSource source = paced
                ? new PacedSource(
                        cup.source(),
                        new SessionClock(Instant.now(), speed.factor().orElse(PRACTICE_SPEED), System::nanoTime))
                : cup.source();
        CheckSubject probe = new CheckSubject(
                CheckSubject.Kind.PRACTICE,
                name,
                source,
                Protocols.named(Protocols.TEXT),
                Optional.empty(),
                OptionalInt.empty(),
                PRACTICE_SENSOR,
                Optional.empty(),
                Correction.UNCHECKED,
                (Target ice) -> cup.dipIntoIce(),
                cup::dipIntoIce);
        return new ProofSubject(probe, cup::takeSample, cup::takeMelted);
    }

    private static SampleCup.Bowl bowl(String name) throws Refusal {
        if (name.equals(ProbeChooser.PRACTICE)) return SampleCup.Bowl.IN_TEMPER;
        String word = name.substring(ProbeChooser.PRACTICE.length() + 1);
        Optional<SampleCup.Bowl> bowl = SampleCup.Bowl.named(word);
        if (bowl.isPresent()) return bowl.get();
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                ProofText.THERE_IS_NO_PRACTICE_BOWL.say(
                        word,
                        Stream.of(SampleCup.Bowl.values())
                                .map(b -> "practice:" + b.word())
                                .collect(Collectors.joining(", "))));
    }
}
