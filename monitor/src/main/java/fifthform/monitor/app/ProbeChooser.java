package fifthform.monitor.app;

import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProbeText;
import fifthform.probe.Spoken;
import fifthform.probe.find.FoundPort;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.Matches;
import fifthform.probe.find.Ports;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns what the maker said of probes into what a session reads. */
final class ProbeChooser {
    static final String PRACTICE = "practice";
    static final String FILE = "file:";
    private static final String NONE = "none";

    /** How much faster than life practice runs: a batch of 45 minutes in a minute and a half, and slower at the cue. */
    private static final double PRACTICE_SPEED = 30;

    private final Wishes wishes;
    private final Adapters.Loaded loaded;
    private final AdapterEar ear;
    private final PrintWriter err;

    /**
     * What the maker said.
     *
     * @param ports where each probe is, by its role; {@code none} for the bath or the room leaves it out
     * @param talks how its adapter talks
     */
    record Wishes(Map<Role, String> ports, Map<Role, String> talks, WatchSpeed speed, Duration interval) {
        Wishes {
            ports = Map.copyOf(ports);
            talks = Map.copyOf(talks);
            Objects.requireNonNull(speed, "speed");
            Objects.requireNonNull(interval, "interval");
        }

        Optional<String> port(Role role) {
            return Optional.ofNullable(ports.get(role));
        }

        Optional<String> talk(Role role) {
            return Optional.ofNullable(talks.get(role));
        }

        WantedProbe wanted(Role role, String port) {
            return new WantedProbe(role, PortName.parse(port), talk(role));
        }
    }

    ProbeChooser(Wishes wishes, Adapters.Loaded loaded, AdapterEar ear, PrintWriter err) {
        this.wishes = Objects.requireNonNull(wishes, "wishes");
        this.loaded = Objects.requireNonNull(loaded, "loaded");
        this.ear = Objects.requireNonNull(ear, "ear");
        this.err = Objects.requireNonNull(err, "err");
    }

    /** What {@code --probe} names; without it an adapter that is remembered, else the last port, else the only one found. */
    ProbeChoice choose(Optional<String> lastPort) throws Refusal, InterruptedException {
        for (String talk : wishes.talks().values()) Protocols.named(talk);
        Optional<String> bowl = wishes.port(Role.BOWL);
        if (bowl.filter(ProbeChooser::isPractice).isPresent()) return practice(bowl.get());
        if (bowl.filter(name -> name.startsWith(FILE)).isPresent()) {
            Spoken spoken = Protocols.named(wishes.talk(Role.BOWL).orElse(Protocols.TEXT));
            return new TapeProbe(
                    Path.of(bowl.get().substring(FILE.length())), spoken, wishes.interval(), wishes.speed());
        }
        if (wishes.speed().factor().isPresent()) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, ProbeText.SPEED_WAS_GIVEN_WITH_A_REAL.say());
        }
        List<WantedProbe> wanted = bowl.isPresent() ? named(bowl.get()) : found(lastPort);
        return new AdapterFinder(new KnownProbes(loaded), ear, err).find(wanted);
    }

    /** The probes of a session that is gone on with, unless the maker names others. */
    static Map<Role, ProbeSetup> before(List<ProbeSetup> probes) {
        return probes.stream().collect(Collectors.toMap(ProbeSetup::role, probe -> probe, (first, second) -> first));
    }

    /** Whether {@code --probe} names a simulated bowl. */
    static boolean isPractice(String name) {
        return name.equals(PRACTICE) || name.startsWith(PRACTICE + ":");
    }

    private ProbeChoice practice(String name) throws Refusal {
        String id = name.equals(PRACTICE) ? Scenarios.FIRST : name.substring(PRACTICE.length() + 1);
        Scenario scenario = Answers.orRefuse(Scenarios.builtIn().find(id), Exit.NOT_UNDERSTOOD);
        return new PracticeProbe(
                scenario,
                wishes.speed().factor().orElse(PRACTICE_SPEED),
                wishes.speed().atCues());
    }

    /** The bowl's port was named; what else is remembered of its adapter comes along. */
    private List<WantedProbe> named(String bowl) {
        List<WantedProbe> wanted = new ArrayList<>(List.of(wishes.wanted(Role.BOWL, bowl)));
        Optional<KeptAdapter> kept =
                new KnownProbes(loaded).at(wanted.get(0).port().port());
        for (Role role : List.of(Role.BATH, Role.ROOM)) {
            Optional<String> port = wishes.port(role)
                    .or(() -> kept.filter(adapter -> AdapterFinder.carries(adapter, role))
                            .map(adapter -> wanted.get(0).port().port()));
            port.filter(p -> !p.equals(NONE)).ifPresent(p -> wanted.add(wishes.wanted(role, p)));
        }
        return wanted;
    }

    private List<WantedProbe> found(Optional<String> lastPort) throws Refusal, InterruptedException {
        List<FoundPort> ready = ready();
        Matches matches = matches(loaded, ready);
        List<WantedProbe> wanted = new ArrayList<>(List.of(wishes.wanted(Role.BOWL, bowl(matches, ready, lastPort))));
        for (Role role : List.of(Role.BATH, Role.ROOM)) {
            Optional<String> port = wishes.port(role)
                    .or(() -> matches.withRole(role).only().map(m -> m.port().path()));
            port.filter(p -> !p.equals(NONE)).ifPresent(p -> wanted.add(wishes.wanted(role, p)));
        }
        wanted.stream()
                .filter(w -> wishes.port(w.role()).isEmpty())
                .forEach(w -> err.println(ProbeText.THE_S_PROBE_IS_TAKEN_TO.say(InWords.of(w.role()), w.port())));
        return wanted;
    }

    /** The bowl's port where nobody named one; looks at what is plugged in. */
    static String bowl(Adapters.Loaded loaded, Optional<String> lastPort) throws Refusal, InterruptedException {
        List<FoundPort> ready = ready();
        return bowl(matches(loaded, ready), ready, lastPort);
    }

    private static List<FoundPort> ready() throws InterruptedException {
        return Ports.list(InstantSource.system()).stream()
                .filter(p -> p.state() == FoundPort.State.READY)
                .toList();
    }

    private static Matches matches(Adapters.Loaded loaded, List<FoundPort> ready) {
        List<KnownAdapter> known =
                loaded.adapters().stream().map(KeptAdapter::known).toList();
        return Matches.of(known, ready);
    }

    private static String bowl(Matches matches, List<FoundPort> ready, Optional<String> lastPort) throws Refusal {
        Matches bowls = matches.withRole(Role.BOWL);
        Optional<String> remembered = bowls.only().map(m -> m.port().path());
        if (remembered.isPresent()) return remembered.get();
        Optional<String> last = lastPort.filter(name -> ready.stream()
                .anyMatch(p -> p.path().equals(PortName.parse(name).port())));
        // Two that were used before: the one of the last batch is not asked for again, another pair is.
        if (last.isPresent()) return last.get();
        if (bowls.isAmbiguous())
            throw ask(
                    ProbeText.SEVERAL_ADAPTERS_THAT_WERE.say(),
                    bowls.all().stream().map(Matches.Match::port).toList());
        if (ready.size() == 1) return ready.get(0).path();
        throw ready.isEmpty() ? nothingFound() : ask(ProbeText.SEVERAL_ADAPTERS_WERE_FOUND.say(), ready);
    }

    private static Refusal ask(String what, List<FoundPort> ports) {
        return new Refusal(
                Exit.NO_PROBE,
                ProbeText.NOTHING_WAS_STARTED_NAME_THE.say(
                        what,
                        ports.stream().map(FoundPort::path).distinct().collect(Collectors.joining(", ")),
                        orPractise()));
    }

    private static Refusal nothingFound() {
        return new Refusal(Exit.NO_PROBE, ProbeText.NO_PROBE_WAS_FOUND_NO_READING.say(orPractise()));
    }

    private static String orPractise() {
        return ProbeText.OR_PRACTISE_ON_A_SIMULATED.say(System.lineSeparator());
    }
}
