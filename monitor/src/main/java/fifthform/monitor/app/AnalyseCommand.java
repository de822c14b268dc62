package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.Analysis;
import fifthform.monitor.intake.CsvRow;
import fifthform.monitor.intake.CsvTape;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.MadeAgain;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Batches without a screen: JSON lines for scripts. */
@Command(name = "analyse", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class AnalyseCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", arity = "1..*")
    private List<String> files;

    @Option(names = "--chocolate", paramLabel = "ID", defaultValue = "dark")
    private String chocolate;

    @Option(names = "--every", paramLabel = "N", defaultValue = "1")
    private int every;

    @Option(names = "--summary")
    private boolean summaryOnly;

    @Option(names = "--json")
    private boolean json;

    private long readings;

    @Override
    public Integer call() throws Refusal {
        if (every < 1) throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.EVERY_WAS_NOTHING_WAS_DONE.say(every));
        Folders folders = common.folders();
        Exit worst = Exit.DONE;
        for (String file : files) {
            readings = 0;
            Exit one = one(file, folders);
            if (one.code() > worst.code()) worst = one;
        }
        return worst.code();
    }

    /** A file that cannot be used is said, and the next ones are analysed all the same. */
    private Exit one(String file, Folders folders) {
        try {
            return isSession(file, folders) ? session(SessionNames.find(file, folders)) : table(file, folders);
        } catch (Refusal refusal) {
            common.err().println(refusal.getMessage());
            return refusal.exit();
        }
    }

    /** A file that is there is what it looks like; else a session may be meant by its name, as in {@code replay}. */
    private static boolean isSession(String file, Folders folders) {
        if (file.endsWith(SessionFiles.ENDING)) return true;
        if (file.equals(STANDARD_INPUT) || Files.exists(Path.of(file))) return false;
        return file.equals(SessionNames.LAST) || Files.exists(folders.sessions().resolve(file + SessionFiles.ENDING));
    }

    private Exit session(Path file) throws Refusal {
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        session.problems().forEach(common.err()::println);
        Setup setup = session.header().setup();
        Instant start = session.header().start();
        Analysis analysis = new Analysis(SessionFiles.name(file), setup, start);
        session.inputs().forEach(recorded -> {
            Input input = recorded.input();
            analysis.take(input);
            if (isReading(setup, input)) line(analysis, seconds(Duration.between(start, input.at())));
        });
        common.out()
                .println(analysis.summary(MadeAgain.from(file, session.header().session())));
        return session.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private Exit table(String file, Folders folders) throws Refusal {
        Recipe recipe = Chocolates.find(chocolate, folders, common.err());
        try (Reader text = open(file);
                CsvTape tape = Answers.orRefuse(CsvTape.open(file, text, Instant.EPOCH), Exit.FILE)) {
            Setup setup = Setups.forFile(recipe, name(file), tape.roles());
            return rows(tape, new Analysis(name(file), setup, Instant.EPOCH), setup);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.IT_WAS_NOT_ANALYSED_NAME_A.say(file, reason(e)));
        }
    }

    private Exit rows(CsvTape tape, Analysis analysis, Setup setup) throws IOException {
        Exit exit = Exit.DONE;
        for (var next = tape.next(); next.isPresent(); next = tape.next()) {
            Optional<CsvRow> row = next.get().fold(Optional::of, problems -> {
                problems.forEach(common.err()::println);
                return Optional.empty();
            });
            if (row.isEmpty()) {
                exit = Exit.ANSWER_IS_NO;
                continue;
            }
            CsvRow r = row.get();
            r.problems().forEach(common.err()::println);
            if (!r.problems().isEmpty()) exit = Exit.ANSWER_IS_NO;
            r.inputs().forEach(analysis::takeWithTicks);
            if (r.inputs().stream().anyMatch(input -> isReading(setup, input))) line(analysis, r.timeText());
        }
        common.out().println(analysis.summary());
        common.out().flush();
        return exit;
    }

    private void line(Analysis analysis, String timeText) {
        readings++;
        if (summaryOnly || (readings - 1) % every != 0) return;
        common.out().println(analysis.line(timeText));
    }

    private static boolean isReading(Setup setup, Input input) {
        return input instanceof Sample sample
                && sample.probe().equals(setup.bowlProbe().id());
    }

    private static String seconds(Duration sinceStart) {
        return Decimal.of(sinceStart.getSeconds() + sinceStart.getNano() / 1e9);
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) return CommandText.THERE_IS_NO_SUCH_FILE.say();
        if (e instanceof AccessDeniedException) return CommandText.YOU_MAY_NOT_READ_THIS_FILE.say();
        if (e instanceof MalformedInputException) return CommandText.THIS_IS_NOT_TEXT_IN_UTF.say();
        return CommandText.IT_CANNOT_BE_READ.say(e.getMessage());
    }

    private static Reader open(String file) throws IOException {
        if (!file.equals(STANDARD_INPUT)) return Files.newBufferedReader(Path.of(file));
        return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    }

    private static String name(String file) {
        if (file.equals(STANDARD_INPUT)) return "stdin";
        String name = String.valueOf(Path.of(file).getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
