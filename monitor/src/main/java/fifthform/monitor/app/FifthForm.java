package fifthform.monitor.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
        name = FifthForm.COMMAND,
        description = "Watches chocolate being tempered, and says what to do before it is too late.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            PlanCommand.class,
            WatchCommand.class,
            ReplayCommand.class,
            ExportCommand.class,
            AnalyseCommand.class,
            PortsCommand.class,
            CheckProbeCommand.class,
            ProveCommand.class,
            PracticeCommand.class,
            RecipesCommand.class,
            BowlsCommand.class,
            SetCommand.class,
            StoreCommand.class,
            LookCommand.class,
            WhyCommand.class,
            LearnCommand.class,
            NotebookCommand.class,
            SetupCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            ImportCommand.class
        },
        footer = {"", "Example: monitor/run watch --probe practice"})
final class FifthForm implements Runnable {
    /** As README tells people to type it; whoever starts the jar itself knows what to put in its place. */
    static final String COMMAND = "monitor/run";

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
