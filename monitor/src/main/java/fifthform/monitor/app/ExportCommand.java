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
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.SessionFiles;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One batch as files for people and for other programs. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Writes a session as files for other programs and for people: a table (csv), the curve as a drawing (svg)"
                    + " and a report of one page (pdf); where you ask for it also the looks to come as a calendar (ics).",
            "They go beside the session unless --out says otherwise, and nothing is overwritten without --force."
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run export last",
            "  monitor/run export last --as pdf --out report.pdf",
            "  monitor/run export last --as csv --from 600 --to 1800 --out -"
        })
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

    @Parameters(paramLabel = "SESSION", description = "a session file, its name in the data folder, or last")
    private String name;

    @Option(
            names = "--as",
            paramLabel = "KIND",
            split = ",",
            description = "csv, svg, pdf, ics, several between commas; the first three where not said")
    private Set<Kind> kinds = EnumSet.noneOf(Kind.class);

    @Option(
            names = "--out",
            paramLabel = "PATH",
            description = "a folder; of one kind also a file, or - for standard output")
    private String wanted;

    @Option(names = "--from", paramLabel = "SECONDS", description = "begin here, seconds since the session's start")
    private Double fromSeconds;

    @Option(names = "--to", paramLabel = "SECONDS", description = "end here")
    private Double toSeconds;

    @Option(names = "--paper", paramLabel = "SIZE", description = "of the report: a4 (usual) or letter")
    private Paper paper = Paper.A4;

    @Option(names = "--force", description = "overwrite a file that is there")
    private boolean force;

    @Spec
    private CommandSpec spec;

    private String calendar = "";

    @Override
    public Integer call() throws Refusal {
        if (kinds.isEmpty()) kinds = EnumSet.of(Kind.CSV, Kind.SVG, Kind.PDF);
        check();
        Path file = SessionNames.find(name, common.folders());
        Recording recording = Answers.orRefuse(Recording.read(file), Exit.FILE);
        PrintWriter err = spec.commandLine().getErr();
        recording.problems().forEach(err::println);
        if (recording.inputs() == 0)
            throw new Refusal(Exit.ANSWER_IS_NO, file + " holds no reading. Nothing was written.");
        if (kinds.contains(Kind.ICS)) calendar = calendar(file);
        Units units = common.units()
                .orElse(new SettingsFile(common.folders().settingsFile())
                        .load()
                        .settings()
                        .units());
        CauseFindings causes = new CauseFindings(recording, units);
        try (ReplayDesk desk = new ReplayDesk(recording, units, causes, causes, InstantSource.system())) {
            double from = fromSeconds == null ? 0 : fromSeconds;
            if (nanos(from) >= recording.endNanos())
                throw new Refusal(
                        Exit.NOT_UNDERSTOOD,
                        "--from was " + from + ", and the session ends " + recording.endNanos() / 1_000_000_000
                                + " s after its start. Nothing was written.");
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
            throw new Refusal(
                    Exit.ANSWER_IS_NO,
                    SessionFiles.name(file) + " is older than four weeks, and no look at its bars is still to come."
                            + " Nothing was written. Leave ics out.");
        return looks.text(now);
    }

    private void check() throws Refusal {
        double from = fromSeconds == null ? 0 : fromSeconds;
        double to = toSeconds == null ? LONGEST_SECONDS : toSeconds;
        if (!(from >= 0 && to > from && to <= LONGEST_SECONDS))
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--from was " + from + " and --to " + to
                            + ". Nothing was written. Give seconds since the session's start, --to after --from.");
        boolean single = STANDARD_OUTPUT.equals(wanted)
                || wanted != null && !Files.isDirectory(Path.of(wanted)) && !wanted.endsWith("/");
        if (single && kinds.size() > 1)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--out was " + wanted + ", which is no folder, and " + kinds.size()
                            + " kinds of file were asked for. Nothing was written. Name a folder that is there, or one"
                            + " kind: --as pdf");
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
            throw new Refusal(
                    Exit.FILE,
                    file + " is there already, and was left as it is. Name another with --out, or say --force.");
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE, file + " cannot be written (" + e.getMessage() + "). Name another place with --out.");
        }
        spec.commandLine().getOut().println("Written: " + file);
    }

    private void toStandardOutput(Kind kind, ReplayDesk desk) throws Refusal {
        PrintStream out = System.out;
        try {
            write(kind, desk, out);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, "Standard output does not take it (" + e.getMessage() + ").");
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
