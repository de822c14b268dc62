package fifthform.monitor.view;

import fifthform.curves.check.Problem;
import fifthform.monitor.chart.Paper;
import fifthform.monitor.chart.ReportPdf;
import fifthform.monitor.replay.CauseFindings;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.report.Report;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.NotebookText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.InstantSource;
import java.util.stream.Collectors;

/** The report of a batch that nobody has open. */
final class BatchPage {
    private BatchPage() {}

    /** Writes it beside the session, under a name that nothing has yet; answers what came of it. Takes seconds. */
    static String write(Path session, Units units) {
        return Recording.read(session)
                .fold(
                        recording -> write(recording, units),
                        problems -> NotebookText.SAID_NOT_DONE.say(
                                problems.stream().map(Problem::toString).collect(Collectors.joining(" "))));
    }

    private static String write(Recording recording, Units units) {
        CauseFindings causes = new CauseFindings(recording, units);
        try (ReplayDesk desk = new ReplayDesk(recording, units, causes, causes, InstantSource.system())) {
            desk.computeAll();
            Path file = free(desk);
            try (OutputStream to = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
                ReportPdf.write(new Report(desk).sheet(), Paper.A4, to);
            }
            return NotebookText.SAID_PAGE_WRITTEN.say(file.toString());
        } catch (IOException e) {
            return NotebookText.SAID_NOT_DONE.say(String.valueOf(e.getMessage()));
        }
    }

    private static Path free(ReplayDesk desk) {
        Path session = desk.recording().file();
        Path file = session.resolveSibling(desk.exportName() + ".pdf");
        for (int number = 2; Files.exists(file); number++)
            file = session.resolveSibling(desk.exportName() + "-" + number + ".pdf");
        return file;
    }
}
