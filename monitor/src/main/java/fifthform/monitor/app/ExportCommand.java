package fifthform.monitor.app;

import fifthform.monitor.chart.Paper;
import fifthform.monitor.chart.ReplayFiles;
import fifthform.monitor.chart.ReportPdf;
import fifthform.monitor.looks.LookCalendar;
import fifthform.monitor.replay.CauseFindings;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.report.Report;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One batch as files for people and for other programs. */
@Command(name = "export", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ExportCommand implements Callable<Integer> {
    /** A week: no session is longer. */
    private static final double LONGEST_SECONDS = 7 * 86_400;

    private static final int COLUMNS = 1600;
    private static final String STANDARD_OUTPUT = "-";

    /** The kinds of files. */
    enum Kind {
        CSV,
        SVG,
        PDF,
        /** The looks that are still to come; only where it is asked for, since there may be none. */
        ICS;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "SESSION")
    private String name;

    @Option(names = "--as", paramLabel = "KIND", split = ",")
    private Set<Kind> kinds = EnumSet.noneOf(Kind.class);

    @Option(names = "--out", paramLabel = "PATH")
    private String wanted;

    @Option(names = "--from", paramLabel = "SECONDS")
    private Double fromSeconds;

    @Option(names = "--to", paramLabel = "SECONDS")
    private Double toSeconds;

    @Option(names = "--paper", paramLabel = "SIZE")
    private Paper paper = Paper.A4;

    @Option(names = "--force")
    private boolean force;

    private String calendar = "";

    @Override
    public Integer call() throws Refusal {
        if (kinds.isEmpty()) kinds = EnumSet.of(Kind.CSV, Kind.SVG, Kind.PDF);
        check();
        Path file = SessionNames.find(name, common.folders());
        Recording recording = Answers.orRefuse(Recording.read(file), Exit.FILE);
        PrintWriter err = common.err();
        recording.problems().forEach(err::println);
        if (recording.inputs() == 0)
            throw new Refusal(Exit.ANSWER_IS_NO, CommandText.HOLDS_NO_READING_NOTHING_WAS.say(file));
        if (kinds.contains(Kind.ICS)) calendar = calendar(file);
        Units units = common.units();
        CauseFindings causes = new CauseFindings(recording, units);
        try (ReplayDesk desk = new ReplayDesk(recording, units, causes, causes, InstantSource.system())) {
            double from = fromSeconds == null ? 0 : fromSeconds;
            if (nanos(from) >= recording.endNanos())
                throw new Refusal(
                        Exit.NOT_UNDERSTOOD,
                        CommandText.FROM_WAS_AND_THE_SESSION_ENDS.say(from, recording.endNanos() / 1_000_000_000));
            if (fromSeconds != null || toSeconds != null)
                desk.startAt(nanos(from), Optional.of(toSeconds == null ? recording.endNanos() : nanos(toSeconds)));
            desk.computeAll();
            for (Kind kind : kinds) write(kind, desk);
        }
        return (recording.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    /** In the words of {@code look --reminders}. */
    private static String calendar(Path file) throws Refusal {
        LookCalendar looks = LookCalendar.of(Answers.orRefuse(JournalReader.read(file), Exit.FILE), Optional.empty());
        Instant now = Instant.now();
        if (looks.toCome(now).isEmpty())
            throw new Refusal(Exit.ANSWER_IS_NO, CommandText.IS_OLDER_THAN_FOUR_WEEKS_AND.say(SessionFiles.name(file)));
        return looks.text(now);
    }

    private void check() throws Refusal {
        double from = fromSeconds == null ? 0 : fromSeconds;
        double to = toSeconds == null ? LONGEST_SECONDS : toSeconds;
        if (!(from >= 0 && to > from && to <= LONGEST_SECONDS))
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.FROM_WAS_AND_TO_NOTHING_WAS.say(from, to));
        boolean single = STANDARD_OUTPUT.equals(wanted)
                || wanted != null && !Files.isDirectory(Path.of(wanted)) && !wanted.endsWith("/");
        if (single && kinds.size() > 1)
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.OUT_WAS_WHICH_IS_NO_FOLDER.say(wanted, kinds.size()));
    }

    private void write(Kind kind, ReplayDesk desk) throws Refusal {
        if (STANDARD_OUTPUT.equals(wanted)) {
            toStandardOutput(kind, desk);
            return;
        }
        Path file = place(kind, desk);
        StandardOpenOption[] how = force
                ? new StandardOpenOption[] {
                    StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE
                }
                : new StandardOpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
        try (OutputStream to = Files.newOutputStream(file, how)) {
            write(kind, desk, to);
        } catch (FileAlreadyExistsException e) {
            throw new Refusal(Exit.FILE, CommandText.IS_THERE_ALREADY_AND_WAS_LEFT.say(file));
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.CANNOT_BE_WRITTEN_NAME_ANOTHER.say(file, AddedLines.why(file, e)));
        }
        common.out().println(CommandText.WRITTEN.say(file));
    }

    private void toStandardOutput(Kind kind, ReplayDesk desk) throws Refusal {
        PrintStream out = System.out;
        try {
            write(kind, desk, out);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.STANDARD_OUTPUT_DOES_NOT_TAKE.say(e.getMessage()));
        }
        out.flush();
    }

    private void write(Kind kind, ReplayDesk desk, OutputStream to) throws IOException {
        switch (kind) {
            case CSV -> {
                Writer text = new OutputStreamWriter(to, StandardCharsets.UTF_8);
                desk.writeTable(text);
                text.flush();
            }
            case SVG -> {
                ReplayPicture picture = desk.picture(COLUMNS);
                to.write(ReplayFiles.svg(picture).getBytes(StandardCharsets.UTF_8));
            }
            case ICS -> to.write(calendar.getBytes(StandardCharsets.UTF_8));
            case PDF -> ReportPdf.write(new Report(desk).sheet(), paper, to);
        }
    }

    /** Beside the session, or where it was asked for. */
    private Path place(Kind kind, ReplayDesk desk) {
        String usual = desk.exportName() + "." + kind;
        if (wanted == null) return desk.recording().file().toAbsolutePath().resolveSibling(usual);
        Path asked = Path.of(wanted);
        return Files.isDirectory(asked) ? asked.resolve(usual) : asked;
    }

    private static long nanos(double seconds) {
        return Math.round(1e9 * seconds);
    }
}
