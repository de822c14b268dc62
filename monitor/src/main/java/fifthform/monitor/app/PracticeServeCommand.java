package fifthform.monitor.app;

import fifthform.monitor.practice.PracticeServer;
import fifthform.monitor.texts.CommandText;
import fifthform.probe.Talk;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.link.SerialSource;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Plays the adapter: a simulated bowl's bytes through a real serial port. */
@Command(name = "serve", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PracticeServeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SCENARIO")
    private String scenario;

    @Option(names = "--port", paramLabel = "PORT", required = true)
    private String port;

    @Option(names = "--talk", paramLabel = "ID", defaultValue = Protocols.TEXT)
    private String talk;

    @Option(names = "--maker", paramLabel = "NAME")
    private String maker;

    @Option(names = "--speed", paramLabel = "N", defaultValue = "1")
    private String speed;

    @ParentCommand
    private PracticeCommand practice;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        MakerKind who = maker == null ? MakerKind.OWN_WAY : PracticeCommand.maker(maker);
        Language language = language();
        Scenario served =
                Answers.orRefuse(PracticeCommand.named(scenario).madeBy(who).speaking(language), Exit.NOT_UNDERSTOOD);
        double times = speed();
        RunningKitchen kitchen = served.start(Instant.now().truncatedTo(ChronoUnit.MICROS));
        try (PracticeServer serving = new PracticeServer(kitchen, opened(language), times)) {
            StopSignal signal = StopSignal.listen(serving::close);
            Exit how = Exit.FAULT;
            try {
                err().println(CommandText.SPEAKING_AT_THROUGH_SIMULATED.say(
                        language, language.line(), port, served.title(), Math.round(times)));
                serving.serve();
                out().println(
                                kitchen.done()
                                        ? CommandText.THE_BATCH_IS_POURED.say()
                                        : CommandText.STOPPED_BEFORE_THE_BATCH_WAS.say());
                how = Exit.DONE;
            } catch (LinkException gone) {
                // Said before the signal's hook may end the process.
                err().println(gone.getMessage() + " " + gone.whatToDo());
                how = Exit.NO_PROBE;
            } finally {
                signal.ended(how);
            }
            return how.code();
        }
    }

    private LinkSource opened(Language language) throws Refusal {
        SerialSource source = new SerialSource(port, language.line(), InstantSource.system());
        try {
            return new OpenedOnce(source, source.open());
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + e.whatToDo());
        }
    }

    private Language language() throws Refusal {
        Language language = Answers.orRefuse(
                Language.of(Answers.orRefuse(Talk.parse(talk), Exit.NOT_UNDERSTOOD)), Exit.NOT_UNDERSTOOD);
        if (language.comesThroughAPort()) return language;
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.TALK_WAS_NOTHING_WAS_DONE_THAT.say(talk));
    }

    private double speed() throws Refusal {
        double times = WatchSpeed.parse(speed).factor().orElse(1);
        if (times <= PracticeServer.FASTEST) return times;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                CommandText.SPEED_WAS_NOTHING_WAS_DONE_A.say(speed, Math.round(PracticeServer.FASTEST)));
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
