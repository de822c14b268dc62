package fifthform.monitor.app;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
        name = FifthForm.COMMAND,
        resourceBundle = FifthForm.HELP,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class FifthForm implements Runnable {
    /** As README tells people to type it; whoever starts the jar itself knows what to put in its place. */
    static final String COMMAND = "monitor/run";

    /** The help of all commands, by their names and those of their options. */
    static final String HELP = "fifthform.monitor.texts.HelpText";

    /** In the order in which they are listed: that of the work. */
    private static final List<Class<?>> COMMANDS = List.of(
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
            ImportCommand.class);

    @Spec
    private CommandSpec spec;

    /**
     * The command line that understands these words. Where the first of them names a command only that one is made, since
     * to read what every command says of itself is a noticeable part of a start.
     *
     * @param words as they were typed; none for the whole of it
     */
    public static CommandLine line(String... words) {
        List<Class<?>> asked = COMMANDS.stream()
                .filter(command -> words.length > 0 && name(command).equals(words[0]))
                .toList();
        CommandLine line = new CommandLine(new FifthForm());
        (asked.isEmpty() ? COMMANDS : asked).forEach(line::addSubcommand);
        line.registerConverter(Double.class, new PlainDouble());
        line.registerConverter(double.class, new PlainDouble());
        return line;
    }

    private static String name(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
