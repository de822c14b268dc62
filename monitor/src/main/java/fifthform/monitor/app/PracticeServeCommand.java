package fifthform.monitor.app;

import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.KitchenOnPort;
import fifthform.probe.Spoken;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.SerialSource;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Plays the adapter: a simulated bowl's bytes through a real serial port. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Speaks as an adapter through a serial port, so that another program can watch a simulated bowl.",
            "The maker hears nothing of what that program says, and goes by the thermometer unless you name another."
        },
        footer = {
            "",
            "Examples:",
            "  fifthform practice serve first-light --port /dev/ttyUSB1",
            "  fifthform practice serve unplugged --port /dev/ttyUSB1 --talk text-lines:baud=115200 --speed 10"
        })
final class PracticeServeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SCENARIO", description = "see: fifthform practice")
    private String scenario;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            required = true,
            description = "the port to speak through: the other end of the one that is watched")
    private String port;

    @Option(
            names = "--talk",
            paramLabel = "ID",
            defaultValue = Protocols.TEXT,
            description = "how to speak; default text-lines")
    private String talk;

    @Option(names = "--maker", paramLabel = "NAME", description = "who tempers; otherwise own-way")
    private String maker;

    @Option(names = "--speed", paramLabel = "N", defaultValue = "1", description = "1 to 60 times life; default 1")
    private String speed;

    @ParentCommand
    private PracticeCommand practice;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        MakerKind who = maker == null ? MakerKind.OWN_WAY : PracticeCommand.maker(maker);
        Scenario served = PracticeCommand.named(scenario).madeBy(who);
        Spoken spoken = spoken();
        double times = WatchSpeed.parse(speed).factor().orElse(1);
        Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
        SessionClock clock = new SessionClock(now, times, System::nanoTime);
        RunningKitchen kitchen = served.start(clock.instant());
        SerialSource line = new SerialSource(port, spoken.line(), clock);
        try (KitchenOnPort serving = new KitchenOnPort(kitchen, line.open(), clock, err()::println)) {
            StopSignal signal = StopSignal.listen(serving::stop);
            Exit how = Exit.FAULT;
            try {
                err().println("Speaking " + spoken.talk() + " at " + spoken.line() + " through " + port + ": "
                        + served.title() + ", simulated, ×" + Math.round(times) + ". Ctrl-C ends it.");
                KitchenOnPort.Ended ended = serving.serve();
                String why = ended == KitchenOnPort.Ended.MAKER_DONE ? "The batch is poured" : "Stopped";
                out().println(why + " after " + serving.linesSent() + " pieces sent.");
                how = Exit.DONE;
            } catch (LinkException gone) {
                // Said before the signal's hook may end the process.
                err().println(gone.getMessage() + " " + gone.whatToDo());
                how = Exit.NO_PROBE;
            } finally {
                signal.ended(how);
            }
            return how.code();
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + e.whatToDo());
        }
    }

    /** The simulated adapter prints text lines. */
    private Spoken spoken() throws Refusal {
        Spoken spoken = Protocols.named(talk);
        if (spoken.protocol().id().equals(Protocols.TEXT)) return spoken;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--talk was " + talk + ". Nothing was done. The simulated adapter speaks " + Protocols.TEXT + " only.");
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
