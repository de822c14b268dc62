package fifthform.monitor.view;

import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.monitor.learned.LearnedFindings;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A notebook of invented batches, as a maker's might be after two months. */
final class NotebookDemo {
    /** Ten days after the last of them. */
    static final Instant NOW = Instant.parse("2026-02-13T09:00:00Z");

    private NotebookDemo() {}

    /** Eighteen of them: good ones, hot ones, one too short in the cool, milk, practice, one cut off, one damaged. */
    static DemoBatches record(Path data) throws Exception {
        DemoBatches demo = new DemoBatches(data);
        for (int i = 0; i < 5; i++) {
            Path good = demo.record(Plan.dark(31.8 + 0.1 * i).held(9 + 2 * i));
            DemoBatches.look(good, 24, Bloom.NONE, Snap.CLEAN);
            DemoBatches.look(good, 170, Bloom.NONE, Snap.CLEAN);
            Path hot = demo.record(Plan.dark(33 + 0.5 * i).in("demo glass").held(8 + 3 * i));
            DemoBatches.look(hot, 26, Bloom.STREAKS, Snap.SOFT);
        }
        demo.record(Plan.dark(30.4).of("milk"));
        demo.record(Plan.dark(32).held(1));
        demo.record(Plan.dark(32).practised());
        demo.record(Plan.dark(36).practised());
        demo.record(Plan.dark(32.2).cutOff());
        Path damaged = demo.record(Plan.dark(32));
        Files.writeString(damaged, "spoilt\n");
        demo.record(Plan.dark(31.9).in("demo glass"));
        demo.record(Plan.dark(32.0));
        return demo;
    }

    /** A desk on which all of it has been read. */
    static NotebookDesk desk(DemoBatches demo, Units units) {
        NotebookDesk desk = new NotebookDesk(demo.notebook(), demo.bin(), units, () -> NOW);
        desk.open();
        List<BatchRow> read = new ArrayList<>();
        desk.readOn(read::add, () -> false);
        desk.take(read);
        Folders folders = new Folders(
                demo.sessions().getParent(),
                demo.sessions(),
                demo.sessions().getParent(),
                demo.sessions().getParent());
        desk.findBy(kind -> LearnedFindings.of(folders, units, kind));
        desk.findingsWanted().ifPresent(kind -> desk.takeFindings(kind, desk.readFindings(kind)));
        return desk;
    }

    static String name(Path file) {
        return SessionFiles.name(file);
    }
}
