package fifthform.monitor.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
        name = "fifthform",
        description = "Watches chocolate being tempered, and says what to do before it is too late.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            WatchCommand.class,
            ReplayCommand.class,
            AnalyseCommand.class,
            PortsCommand.class,
            CheckProbeCommand.class,
            PracticeCommand.class,
            RecipesCommand.class,
            BowlsCommand.class
        },
        footer = {"", "Example: fifthform watch --probe practice"})
final class FifthForm implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
