package fifthform.monitor.app;

import fifthform.monitor.json.JsonLine;
import fifthform.probe.find.FoundPort;
import fifthform.probe.find.Heard;
import fifthform.probe.find.Listener;
import fifthform.probe.find.Ports;
import fifthform.probe.find.UsbIdentity;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.SerialSource;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What is plugged in. */
@Command(
        name = "ports",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Lists the serial ports, what seems to be behind them, and how to mend one that cannot be opened.",
        footer = {"", "Example: fifthform ports"})
final class PortsCommand implements Callable<Integer> {
    private static final Duration LISTEN = Duration.ofSeconds(4);

    @Mixin
    private CommonOptions common;

    @Option(names = "--json", description = "answer as JSON lines")
    private boolean json;

    @Option(names = "--listen", description = "open each port that can be opened for a few seconds and say what talks")
    private boolean listen;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        List<FoundPort> ports = Ports.list(InstantSource.system());
        for (FoundPort port : ports) {
            Optional<String> talk = talk(port);
            if (json) out().println(line(port, talk));
            else describe(port, talk);
        }
        boolean any = ports.stream().anyMatch(p -> p.state() == FoundPort.State.READY);
        if (!any && !json) {
            out().println(
                            "No adapter is ready. Plug one in and ask again, or practise: fifthform watch --probe practice");
        }
        return (any ? Exit.DONE : Exit.NO_PROBE).code();
    }

    private Optional<String> talk(FoundPort port) throws InterruptedException {
        if (!listen || port.state() != FoundPort.State.READY) return Optional.empty();
        Listener ear =
                new Listener(line -> new SerialSource(port.path(), line, InstantSource.system()), Protocols.all());
        try {
            return Optional.of(ear.listen(LISTEN).stream()
                    .filter(Heard::isConvincing)
                    .findFirst()
                    .map(h -> h.protocol().id() + " (" + h.goodSignals() + " readings in " + LISTEN.toSeconds() + " s)")
                    .orElse("nothing that is understood in " + LISTEN.toSeconds() + " s"));
        } catch (LinkException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void describe(FoundPort port, Optional<String> talk) {
        String identity = port.usb().map(UsbIdentity::toString).orElse("not a USB adapter");
        out().println(port.path() + " · " + port.description() + " · " + identity);
        port.reason()
                .ifPresentOrElse(
                        reason -> out().println(
                                        "  " + reason + " " + port.whatToDo().orElse("")),
                        () -> out().println("  Ready: fifthform watch --probe " + port.path()));
        talk.ifPresent(words -> out().println("  Heard: " + words));
    }

    private static String line(FoundPort port, Optional<String> talk) {
        JsonLine line = new JsonLine()
                .text("port", port.path())
                .text("description", port.description())
                .text(
                        "state",
                        port.state().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        port.usb().ifPresent(usb -> line.text("usb", usb.toString()));
        port.reason().ifPresent(reason -> line.text("reason", reason));
        port.whatToDo().ifPresent(mend -> line.text("what_to_do", mend));
        talk.ifPresent(words -> line.text("heard", words));
        return line.end();
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
