package fifthform.monitor.app;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.intake.CsvRow;
import fifthform.monitor.intake.CsvTape;
import fifthform.monitor.intake.Ticked;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;

/**
 * A table of readings as a session: its rows go the way of readings from a wire, through the loop, the engine and the
 * journal. What the table does not say is asked for, never guessed.
 */
final class TableImport {
    private static final int MOST_NAMED = 20;

    private final Folders folders;
    private final TableOptions options;
    private final PrintWriter out;
    private final PrintWriter err;

    TableImport(Folders folders, TableOptions options, PrintWriter out, PrintWriter err) {
        this.folders = folders;
        this.options = options;
        this.out = out;
        this.err = err;
    }

    private record Read(List<CsvRow> rows, Optional<OffsetDateTime> began, int bad, Setup setup) {}

    Exit take(Path file, Path to) throws Refusal {
        ZoneId zone = ZoneId.systemDefault();
        Optional<OffsetDateTime> said = options.start(zone);
        Read read = read(file, said.map(OffsetDateTime::toInstant).orElse(Instant.EPOCH), zone);
        OffsetDateTime start = read.began()
                .or(() -> said)
                .orElseThrow(() -> refused(CommandText.SAYS_SECONDS_AND_NOT_WHEN_THEY.say(file)));
        if (read.bad() > 0 && !options.skipsBadRows()) {
            err.println(CommandText.OF_NOTHING_WAS_TAKEN_IN_MEND.say(file));
            return Exit.ANSWER_IS_NO;
        }
        try {
            return keep(file, read, start, new SessionFiles(to), to);
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw refused(CommandText.WAS_NOT_READ_TO_ITS_END.say(file));
        }
    }

    private static Refusal refused(String why) {
        return new Refusal(Exit.FILE, why);
    }

    private Read read(Path file, Instant start, ZoneId zone) throws Refusal {
        Recipe recipe = Chocolates.find(options.chocolate(), folders, err);
        String name = String.valueOf(file.getFileName());
        try {
            String text = Files.readString(file);
            try (CsvTape tape = opened(CsvTape.open(name, new StringReader(text), start, options.layout(text, zone)))) {
                List<CsvRow> rows = new ArrayList<>();
                List<Problem> problems = new ArrayList<>();
                for (var next = tape.next(); next.isPresent(); next = tape.next()) {
                    next.get().fold(rows::add, problems::addAll);
                }
                rows.forEach(row -> problems.addAll(row.problems()));
                tell(problems);
                Setup setup = Setups.ofTable(recipe, options.bowl(), name, tape.roles());
                if (rows.stream().noneMatch(row -> hasReading(row, setup)))
                    throw refused(CommandText.HAS_NO_READING_OF_THE.say(file));
                return new Read(rows, tape.began(), problems.size(), setup);
            }
        } catch (MalformedInputException e) {
            throw refused(CommandText.IS_NOT_TEXT_IN_UTF_8.say(file));
        } catch (IOException e) {
            throw refused(CommandText.CANNOT_BE_READ_NOTHING_WAS.say(file, e.getMessage()));
        }
    }

    private static CsvTape opened(Parsed<CsvTape> tape) throws Refusal {
        List<Problem> problems = new ArrayList<>();
        Optional<CsvTape> opened = tape.fold(Optional::of, found -> {
            problems.addAll(found);
            return Optional.empty();
        });
        return opened.orElseThrow(() -> new Refusal(
                Exit.FILE,
                CommandText.NOTHING_WAS_TAKEN_IN_COLUMNS.say(
                        problems.stream().map(Problem::toString).collect(Collectors.joining(System.lineSeparator())))));
    }

    private static boolean hasReading(CsvRow row, Setup setup) {
        return row.inputs().stream()
                .anyMatch(input -> input instanceof Sample sample
                        && sample.probe().equals(setup.bowlProbe().id()));
    }

    private void tell(List<Problem> problems) {
        problems.stream().limit(MOST_NAMED).forEach(err::println);
        if (problems.size() > MOST_NAMED) err.println(CommandText.AND_MORE.say(problems.size() - MOST_NAMED));
    }

    private Exit keep(Path file, Read read, OffsetDateTime start, SessionFiles sessions, Path to)
            throws StoreException, InterruptedException {
        Instant began = start.toInstant();
        Optional<Path> here = isHere(sessions, began, read.setup().bowlProbe().place());
        if (here.isPresent()) {
            out.println(CommandText.HERE_ALREADY.say(SessionFiles.name(here.get())));
            return Exit.DONE;
        }
        Path home =
                sessions.reserve(began, start.getOffset(), read.setup().recipe().id());
        SessionHeader header = new SessionHeader(
                Version.number(), Version.commit(), SessionFiles.name(home), began, start.getOffset(), read.setup());
        // Its lines are of the table's time: when the bars are to be looked at follows from it.
        AtomicReference<Instant> now = new AtomicReference<>(began);
        JournalWriter journal = JournalWriter.create(home, header, now::get, trouble -> {});
        List<Input> inputs = new ArrayList<>();
        read.rows().forEach(row -> inputs.addAll(row.inputs()));
        Ticked source = new Ticked(inputs, began);
        SessionLoop loop = new SessionLoop(
                read.setup(),
                began,
                () -> {
                    Optional<Recorded> next = source.next();
                    next.ifPresent(recorded -> now.set(recorded.input().at()));
                    return next;
                },
                new JournalRecord(journal),
                List.of(),
                System::nanoTime);
        journal.note(
                began,
                "table",
                CommandText.TAKEN_IN_FROM_ROWS_OF_THEM.say(
                        file.getFileName(), read.rows().size(), read.bad()));
        loop.run();
        SessionSnapshot last = loop.snapshot();
        Setup inForce = last.setup();
        journal.summary(BatchFigures.of(inForce, last.tally(), began));
        journal.close();
        out.println(CommandText.TAKEN_IN_ROWS_OF_A_TABLE.say(
                SessionFiles.name(home), read.rows().size(), SessionFiles.name(home)));
        return read.bad() > 0 ? Exit.ANSWER_IS_NO : Exit.DONE;
    }

    /** The same table, taken in before. */
    private static Optional<Path> isHere(SessionFiles sessions, Instant began, String place) throws StoreException {
        for (Path each : sessions.all()) {
            boolean same = JournalReader.readHeader(each)
                    .fold(
                            header -> header.start().equals(began)
                                    && header.setup().bowlProbe().place().equals(place),
                            problems -> false);
            if (same) return Optional.of(each);
        }
        return Optional.empty();
    }
}
