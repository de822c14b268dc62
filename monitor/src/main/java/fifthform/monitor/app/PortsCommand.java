package fifthform.monitor.app;

import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProbeText;
import fifthform.probe.find.Asking;
import fifthform.probe.find.Candidate;
import fifthform.probe.find.ChannelHeard;
import fifthform.probe.find.Decision;
import fifthform.probe.find.FoundPort;
import fifthform.probe.find.Ports;
import fifthform.probe.find.Recognition;
import fifthform.probe.find.UsbIdentity;
import fifthform.probe.link.LinkException;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is plugged in. */
@Command(name = "ports", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PortsCommand implements Callable<Integer> {
    /** More of them say the same in other words. */
    private static final int REJECTED_SHOWN = 3;

    @Mixin
    private CommonOptions common;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--listen")
    private boolean listen;

    @Option(names = "--ask")
    private boolean ask;

    /** What listening came to; the words where it could not be opened. */
    private record Heard(Optional<Recognition> recognition, String words) {}

    @Override
    public Integer call() throws InterruptedException {
        Adapters.Loaded loaded = new Adapters(common.folders().probes()).load();
        loaded.problems().forEach(common.err()::println);
        KnownProbes known = new KnownProbes(loaded);
        List<FoundPort> ports = Ports.list(InstantSource.system());
        for (FoundPort port : ports) {
            Optional<Heard> heard = heard(port);
            if (json) common.out().println(line(port, known.at(port.path()), heard));
            else describe(port, known.at(port.path()), heard);
        }
        boolean any = ports.stream().anyMatch(p -> p.state() == FoundPort.State.READY);
        if (!any && !json) {
            common.out().println(ProbeText.NO_ADAPTER_IS_READY_PLUG_ONE.say());
        }
        return (any ? Exit.DONE : Exit.NO_PROBE).code();
    }

    private Optional<Heard> heard(FoundPort port) throws InterruptedException {
        boolean canTalk = port.kind() == FoundPort.Kind.SERIAL && port.state() == FoundPort.State.READY;
        if (!(listen || ask) || !canTalk) return Optional.empty();
        try {
            Recognition recognition = new AdapterEar(ask ? Asking.ALLOWED : Asking.NEVER).listen(port.path());
            return Optional.of(new Heard(Optional.of(recognition), recognition.reason()));
        } catch (LinkException e) {
            return Optional.of(new Heard(Optional.empty(), e.getMessage() + " " + e.whatToDo()));
        }
    }

    private void describe(FoundPort port, Optional<KeptAdapter> kept, Optional<Heard> heard) {
        common.out()
                .println(port.path() + " · " + port.description() + " · "
                        + port.usb().map(UsbIdentity::toString).orElse(notUsb(port)));
        port.reason()
                .ifPresentOrElse(
                        reason -> common.out()
                                .println("  " + reason + " " + port.whatToDo().orElse("")),
                        () -> common.out().println(ProbeText.READY_MONITOR_RUN_WATCH_PROBE.say(port.path())));
        kept.ifPresent(adapter -> common.out().println(ProbeText.USED_BEFORE.say(use(adapter))));
        heard.ifPresent(this::describe);
    }

    private static String notUsb(FoundPort port) {
        return port.kind() == FoundPort.Kind.KERNEL_SENSOR
                ? ProbeText.SENSOR_OF_THE_KERNEL.say()
                : ProbeText.NOT_A_USB_ADAPTER.say();
    }

    private static String use(KeptAdapter adapter) {
        String roles = adapter.known().probes().stream()
                .map(p -> InWords.of(p.role())
                        + (p.correction().isChecked() ? ProbeText.CHECKED.say() : ProbeText.NOT_CHECKED.say()))
                .collect(Collectors.joining("; "));
        return adapter.known().talk() + (roles.isEmpty() ? "" : "; " + roles);
    }

    private void describe(Heard heard) {
        Optional<Decision> decision = heard.recognition().flatMap(Recognition::decision);
        common.out()
                .println(ProbeText.HEARD.say(
                        heard.words(), decision.map(PortsCommand::sure).orElse("")));
        decision.stream()
                .flatMap(d -> d.channels().stream())
                .forEach(c -> common.out().println("    " + channel(c)));
        rejected(heard).forEach(c -> common.out().println(ProbeText.NOT.say(why(c))));
    }

    private static String sure(Decision decision) {
        return ProbeText.SURE_TO.say(String.format(Locale.ROOT, "%.0f", 100 * decision.confidence()));
    }

    private static String channel(ChannelHeard channel) {
        return String.format(
                Locale.ROOT,
                "%s: %.2f °C (PORT@%s)",
                channel.title(),
                channel.lastCelsius(),
                channel.name().orElse(String.valueOf(channel.channel())));
    }

    /** Those that understood something, and still were not taken. */
    private static List<Candidate> rejected(Heard heard) {
        return heard.recognition().stream()
                .flatMap(r -> r.candidates().stream())
                .filter(c -> c.rejection().isPresent()
                        && c.evidence().readings() + c.evidence().faults() > 0)
                .limit(REJECTED_SHOWN)
                .toList();
    }

    private static String why(Candidate candidate) {
        return ProbeText.AT.say(
                candidate.protocol().id(),
                candidate.line(),
                candidate.rejection().orElse(""));
    }

    private static String line(FoundPort port, Optional<KeptAdapter> kept, Optional<Heard> heard) {
        JsonLine line = new JsonLine()
                .text("port", port.path())
                .text("description", port.description())
                .text("kind", word(port.kind()))
                .text("state", word(port.state()));
        port.usb().ifPresent(usb -> line.text("usb", usb.toString()));
        port.usb().flatMap(UsbIdentity::serial).ifPresent(serial -> line.text("serial", serial));
        port.reason().ifPresent(reason -> line.text("reason", reason));
        port.whatToDo().ifPresent(mend -> line.text("what_to_do", mend));
        kept.ifPresent(
                adapter -> line.text("used_before", adapter.known().talk().toString()));
        heard.ifPresent(h -> {
            line.text("heard", h.words());
            h.recognition()
                    .flatMap(Recognition::decision)
                    .ifPresent(d -> line.text("talk", d.spoken().talk().toString())
                            .number("confidence", d.confidence())
                            .objects(
                                    "channels",
                                    d.channels().stream()
                                            .map(PortsCommand::json)
                                            .toList()));
            line.objects(
                    "rejected",
                    rejected(h).stream()
                            .map(c -> new JsonLine()
                                    .text("talk", c.protocol().id())
                                    .text("line", c.line().toString())
                                    .text("why", c.rejection().orElse("")))
                            .toList());
        });
        return line.end();
    }

    private static JsonLine json(ChannelHeard channel) {
        JsonLine line = new JsonLine().whole("channel", channel.channel());
        channel.name().ifPresent(name -> line.text("name", name));
        return line.number("last_c", channel.lastCelsius());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
