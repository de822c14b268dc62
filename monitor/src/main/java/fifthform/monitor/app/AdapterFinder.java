package fifthform.monitor.app;

import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProbeText;
import fifthform.probe.find.ChannelHeard;
import fifthform.probe.find.Recognition;
import fifthform.probe.link.LinkException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds for each wanted probe its adapter and how that talks: as the maker said, else as it did before, else by listening.
 */
final class AdapterFinder {
    private final KnownProbes known;
    private final AdapterEar ear;
    private final PrintWriter err;
    private final Map<String, Adapter> adapters = new LinkedHashMap<>();

    /** @param err what is found out is said here */
    AdapterFinder(KnownProbes known, AdapterEar ear, PrintWriter err) {
        this.known = Objects.requireNonNull(known, "known");
        this.ear = Objects.requireNonNull(ear, "ear");
        this.err = Objects.requireNonNull(err, "err");
    }

    PortProbe find(List<WantedProbe> wanted) throws Refusal, InterruptedException {
        List<PortProbe.Wired> wired = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (WantedProbe probe : wanted) {
            String path = KnownProbes.place(probe.port().port());
            Adapter adapter = adapter(path, probe);
            boolean shared = wanted.stream()
                    .anyMatch(other -> other != probe
                            && KnownProbes.place(other.port().port()).equals(path));
            int channel = channel(probe, adapter, shared);
            if (!taken.add(path + "@" + channel)) throw sameChannel(probe, path);
            ProbeId id = new ProbeId(probe.role().word());
            wired.add(new PortProbe.Wired(
                    known.setup(id, probe.role(), adapter.spoken(), probe.port(), channel),
                    adapters.get(path),
                    channel));
        }
        return new PortProbe(wired);
    }

    private Adapter adapter(String path, WantedProbe probe) throws Refusal, InterruptedException {
        if (adapters.containsKey(path)) return adapters.get(path);
        Optional<String> before = remembered(path);
        Optional<String> usual =
                PortProbe.isKernelSensor(path) ? Optional.of(Protocols.KERNEL_FILES) : Optional.empty();
        Optional<String> way = probe.talk().or(() -> before).or(() -> usual);
        Adapter found =
                way.isPresent() ? new Adapter(path, Protocols.named(way.get()), List.of()) : heard(path, probe.role());
        adapters.put(path, found);
        return found;
    }

    /** How it talked before; what this program does not know, from a newer one or another hand, is found out anew. */
    private Optional<String> remembered(String path) {
        Optional<String> talk = known.at(path).map(kept -> kept.known().talk().toString());
        try {
            if (talk.isPresent()) Protocols.named(talk.get());
            return talk;
        } catch (Refusal unknown) {
            err.println(ProbeText.THE_ADAPTER_ON_IS_REMEMBERED.say(path, talk.orElseThrow()));
            return Optional.empty();
        }
    }

    private Adapter heard(String path, Role role) throws Refusal, InterruptedException {
        err.println(ProbeText.LISTENING_TO_TO_FIND_OUT_HOW.say(path));
        Recognition recognition = listened(() -> ear.listen(path));
        if (recognition.decision().isPresent()) {
            err.println(ProbeText.IT_TALKS_THIS_IS_REMEMBERED.say(recognition.reason()));
            return new Adapter(
                    path,
                    recognition.decision().get().spoken(),
                    recognition.decision().get().channels());
        }
        boolean silent =
                recognition.candidates().stream().allMatch(c -> c.evidence().bytes() == 0);
        if (!silent) {
            // The driver knows of one probe and one option only.
            String reason = recognition.reason().replace("--talk", PortName.talkOption(role));
            throw new Refusal(Exit.NO_PROBE, path + ": " + reason);
        }
        err.println(ProbeText.IT_IS_WATCHED_AS_FOR_THE.say(
                recognition.reason(), Protocols.TEXT, PortName.talkOption(role)));
        return new Adapter(path, Protocols.named(Protocols.TEXT), List.of());
    }

    private int channel(WantedProbe probe, Adapter adapter, boolean shared) throws Refusal, InterruptedException {
        if (probe.port().channel().isPresent())
            return named(probe.port().channel().get(), adapter);
        Optional<Integer> before = known.at(adapter.path()).stream()
                .flatMap(kept -> kept.known().probes().stream())
                .filter(p -> p.role() == probe.role())
                .map(p -> p.channel())
                .findFirst();
        if (before.isPresent()) return before.get();
        Optional<Integer> called = called(probe.role().word(), adapter);
        if (called.isPresent()) return called.get();
        if (shared) throw unnamed(probe, adapter);
        if (adapter.channels().size() > 1)
            err.println(ProbeText.IT_HAS_SEVERAL_CHANNELS_THE.say(
                    offered(adapter),
                    InWords.of(probe.role()),
                    PortName.option(probe.role()),
                    adapter.path(),
                    adapter.channels()
                            .get(1)
                            .name()
                            .orElse(String.valueOf(adapter.channels().get(1).channel()))));
        return adapter.firstChannel();
    }

    /** A channel by its number, by the adapter's own name for it, or by a name that ends in its number. */
    private int named(String name, Adapter adapter) throws Refusal, InterruptedException {
        if (name.matches("\\d{1,6}")) return Integer.parseInt(name);
        Optional<Integer> heard = called(name, adapter);
        if (heard.isPresent()) return heard.get();
        if (name.matches("[A-Za-z]+\\d{1,6}")) return Integer.parseInt(name.replaceAll("[A-Za-z]+", ""));
        Adapter listened = listenedTo(adapter);
        return called(name, listened)
                .orElseThrow(() -> new Refusal(
                        Exit.NO_PROBE,
                        ProbeText.THE_ADAPTER_ON_HAS_NO_CHANNEL.say(
                                adapter.path(),
                                name,
                                listened.channels().isEmpty()
                                        ? ProbeText.IT_DID_NOT_SAY_ANYTHING_LOOK.say()
                                        : ProbeText.IT_HAS.say(offered(listened)))));
    }

    private Adapter listenedTo(Adapter adapter) throws Refusal, InterruptedException {
        if (!adapter.channels().isEmpty() || PortProbe.isKernelSensor(adapter.path())) return adapter;
        Recognition recognition =
                listened(() -> ear.listen(adapter.path(), adapter.spoken().protocol()));
        List<ChannelHeard> channels =
                recognition.decision().map(d -> d.channels()).orElse(List.of());
        Adapter listened = new Adapter(adapter.path(), adapter.spoken(), channels);
        adapters.put(adapter.path(), listened);
        return listened;
    }

    private static Optional<Integer> called(String name, Adapter adapter) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return adapter.channels().stream()
                .filter(c -> c.name()
                        .filter(own -> own.toLowerCase(Locale.ROOT).equals(wanted))
                        .isPresent())
                .map(ChannelHeard::channel)
                .findFirst();
    }

    private static String offered(Adapter adapter) {
        return adapter.channels().stream()
                .map(c -> String.format(Locale.ROOT, "%s %.1f °C", c.title(), c.lastCelsius()))
                .collect(Collectors.joining(", "));
    }

    /** Hears a port out. */
    private interface Listening {
        Recognition hear() throws LinkException, InterruptedException;
    }

    private static Recognition listened(Listening listening) throws Refusal, InterruptedException {
        try {
            return listening.hear();
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + e.whatToDo());
        }
    }

    private static Refusal sameChannel(WantedProbe probe, String path) {
        return new Refusal(
                Exit.NOT_UNDERSTOOD,
                ProbeText.TWO_PROBES_ARE_NAMED_ON_ONE.say(
                        path, InWords.of(probe.role()), PortName.option(probe.role()), path));
    }

    private static Refusal unnamed(WantedProbe probe, Adapter adapter) {
        String which = adapter.channels().isEmpty() ? "" : ProbeText.IT_HAS_ADAPTER_FINDER.say(offered(adapter));
        return new Refusal(
                Exit.NOT_UNDERSTOOD,
                ProbeText.SEVERAL_PROBES_ARE_ON_AND.say(
                        adapter.path(),
                        InWords.of(probe.role()),
                        which,
                        PortName.option(probe.role()),
                        adapter.path()));
    }

    /** Whether this adapter carries a probe with this role as well. */
    static boolean carries(KeptAdapter kept, Role role) {
        return kept.known().probes().stream().anyMatch(p -> p.role() == role);
    }
}
