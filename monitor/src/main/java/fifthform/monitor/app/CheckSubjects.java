package fifthform.monitor.app;

import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.intake.PacedSource;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.texts.CheckText;
import fifthform.probe.Spoken;
import fifthform.probe.find.Ports;
import fifthform.probe.link.LinkSource;
import fifthform.probe.link.TapeSource;
import fifthform.probe.reader.ProbeLine;
import fifthform.simulator.device.CheckPots;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/** Turns the name of a probe into one that can be checked. */
final class CheckSubjects {
    /** An invented adapter of the better kind. */
    private static final Sensor PRACTICE_SENSOR =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MCP9600);

    private static final CheckPots.Make SECOND_PRACTICE_PROBE = new CheckPots.Make(0.998, 0.2, 22);
    /** A comfortable bath for two probes, °C. */
    private static final double PRACTICE_BATH_CELSIUS = 32;
    /** So fast that nobody waits, and so slow that it can be read. */
    private static final double PRACTICE_SPEED = 5;

    private final Adapters.Loaded loaded;
    private final Optional<String> talk;
    private final OptionalInt channel;
    private final CheckSensorOptions sensors;
    private final CheckDesk.Manner manner;
    private final AdapterFinder finder;

    /**
     * @param manner who reads along: practice goes so slowly that a person can
     * @param finder finds real adapters
     */
    CheckSubjects(
            Adapters.Loaded loaded,
            Optional<String> talk,
            OptionalInt channel,
            CheckSensorOptions sensors,
            CheckDesk.Manner manner,
            AdapterFinder finder) {
        this.loaded = Objects.requireNonNull(loaded, "loaded");
        this.talk = Objects.requireNonNull(talk, "talk");
        this.channel = Objects.requireNonNull(channel, "channel");
        this.sensors = Objects.requireNonNull(sensors, "sensors");
        this.manner = Objects.requireNonNull(manner, "manner");
        this.finder = Objects.requireNonNull(finder, "finder");
    }

    /** The probe that is to be checked. */
    CheckSubject first(String name) throws Refusal, InterruptedException {
        if (talk.isPresent()) Protocols.named(talk.get()); // practice has no use for it, and yet a mistake is told
        if (ProbeChooser.isPractice(name)) return practice("practice", CheckPots.Make.DEMO, 1);
        return name.startsWith(ProbeChooser.FILE)
                ? recorded(Path.of(name.substring(ProbeChooser.FILE.length())))
                : real(name, talk);
    }

    /** The probe beside it; how the first talks says nothing of it. */
    CheckSubject second(String name) throws Refusal, InterruptedException {
        if (ProbeChooser.isPractice(name))
            return practice(CheckText.PRACTICE_SECOND_PROBE.say(), SECOND_PRACTICE_PROBE, 2);
        return name.startsWith(ProbeChooser.FILE)
                ? recorded(Path.of(name.substring(ProbeChooser.FILE.length())))
                : real(name, Optional.empty());
    }

    /** Adapter, talk and channel are found as for a batch. */
    private CheckSubject real(String name, Optional<String> wantedTalk) throws Refusal, InterruptedException {
        PortName said = PortName.parse(name);
        PortName port =
                channel.isPresent() ? new PortName(said.port(), Optional.of(String.valueOf(channel.getAsInt()))) : said;
        PortProbe.Wired wired = finder.find(List.of(new WantedProbe(Role.BOWL, port, wantedTalk)))
                .wired()
                .get(0);
        Spoken spoken = wired.adapter().spoken();
        Sensor known = wired.setup().sensor();
        Sensor told = known.equals(Sensor.UNKNOWN) ? spoken.protocol().sensor() : known;
        String place = wired.adapter().path();
        return new CheckSubject(
                CheckSubject.Kind.REAL,
                place,
                PortProbe.source(wired.adapter(), InstantSource.system()),
                spoken,
                Ports.identity(place),
                wired.channel() == ProbeLine.FIRST_TO_SPEAK ? OptionalInt.empty() : OptionalInt.of(wired.channel()),
                sensors.over(told),
                new KnownProbes(loaded).at(place),
                wired.setup().correction(),
                target -> {},
                () -> {});
    }

    private CheckSubject recorded(Path file) throws Refusal {
        Spoken spoken = Protocols.named(talk.orElse(Protocols.TEXT));
        LinkSource tape = Answers.orRefuse(TapeSource.read(file, Instant.now(), Duration.ofSeconds(1)), Exit.FILE);
        return unkept(
                CheckSubject.Kind.RECORDED,
                TapeProbe.PLACE + file.getFileName(),
                tape,
                spoken,
                spoken.protocol().sensor(),
                target -> {},
                () -> {});
    }

    private CheckSubject practice(String place, CheckPots.Make make, long seed) throws Refusal {
        Instant start = Instant.now();
        CheckPots pots = new CheckPots(make, start, new SplittableRandom(seed));
        LinkSource source = manner == CheckDesk.Manner.AT_A_TERMINAL
                ? new PacedSource(pots.source(), new SessionClock(start, PRACTICE_SPEED, System::nanoTime))
                : pots.source();
        return unkept(
                CheckSubject.Kind.PRACTICE,
                place,
                source,
                Protocols.named(Protocols.TEXT),
                PRACTICE_SENSOR,
                target -> {
                    switch (target.kind()) {
                        case ICE -> pots.dipIntoIce();
                        case BOIL -> pots.dipIntoBoil(target.trueCelsius());
                    }
                },
                () -> pots.dipIntoBath(PRACTICE_BATH_CELSIUS));
    }

    private CheckSubject unkept(
            CheckSubject.Kind kind,
            String place,
            LinkSource source,
            Spoken spoken,
            Sensor told,
            Consumer<Target> dip,
            Runnable stir)
            throws Refusal {
        return new CheckSubject(
                kind,
                place,
                source,
                spoken,
                Optional.empty(),
                channel,
                sensors.over(told),
                Optional.empty(),
                Correction.UNCHECKED,
                dip,
                stir);
    }
}
