package fifthform.monitor.app;

import fifthform.monitor.proofs.Companions;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sessions that somebody sent. */
@Command(name = "import", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ImportCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private TableOptions table;

    @Parameters(paramLabel = "FILE", arity = "1..*")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--mine")
    private boolean mine;

    @Override
    public Integer call() throws Refusal {
        Folders folders = common.folders();
        Path to = mine ? folders.sessions() : folders.sent();
        Exit exit = Exit.DONE;
        for (Path file : files) {
            Exit each = take(file, to);
            if (each != Exit.DONE) exit = each;
        }
        return exit.code();
    }

    private static boolean isTable(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".csv") || name.endsWith(".tsv");
    }

    private Exit take(Path file, Path to) throws Refusal {
        PrintWriter err = common.err();
        if (isTable(file)) {
            return new TableImport(common.folders(), table, common.out(), err).take(file, to);
        }
        if (!file.toString().endsWith(SessionFiles.ENDING)) {
            err.println(CommandText.IS_NO_SESSION_ITS_NAME_DOES.say(file, SessionFiles.ENDING));
            return Exit.NOT_UNDERSTOOD;
        }
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        session.problems().forEach(err::println);
        Path home = to.resolve(file.getFileName());
        try {
            if (Files.exists(home)) return isThere(file, home);
            Files.createDirectories(to);
            List<Path> beside = new ArrayList<>();
            for (Path each : Companions.of(file)) if (!Files.exists(to.resolve(each.getFileName()))) beside.add(each);
            // The session last: until then there is nothing that a list would show.
            for (Path each : beside) Files.copy(each, to.resolve(each.getFileName()));
            Files.copy(file, home);
            String name = SessionFiles.name(home);
            // A batch of one's own by the same name would be found first.
            boolean found = SessionNames.find(name, common.folders()).equals(home);
            common.out()
                    .println(CommandText.TAKEN_IN_SEE_IT_WITH_MONITOR.say(
                            name,
                            beside.isEmpty() ? "" : CommandText.WITH_FILES_BESIDE_IT.say(beside.size()),
                            found ? name : home.toString()));
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.COULD_NOT_BE_COPIED_TO_CHECK.say(file, to, e.getMessage()));
        }
        return session.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private Exit isThere(Path file, Path home) throws IOException {
        if (Files.mismatch(file, home) < 0) {
            common.out().println(CommandText.HERE_ALREADY.say(SessionFiles.name(home)));
            return Exit.DONE;
        }
        common.err().println(CommandText.ANOTHER_BATCH_IS_HERE_AS_WAS.say(home, file, SessionFiles.ENDING));
        return Exit.ANSWER_IS_NO;
    }
}
