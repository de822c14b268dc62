package fifthform.monitor.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.replay.Desks;
import fifthform.monitor.replay.ReplayDesk;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands over what in the drawing of a batch. */
class ReplayFilesTest {
    private static final int COLUMNS = 800;

    @TempDir
    Path folder;

    private String drawing(ReplayDesk desk) {
        return ReplayFiles.svg(desk.picture(COLUMNS));
    }

    @Test
    void aNoteIsNotStruckThroughByACursor() {
        ReplayDesk desk = Desks.desk(Desks.tape("demo-own-way", folder));
        desk.seek(1_996_000_000_000L);
        desk.setB();
        desk.seek(1_884_000_000_000L);
        desk.note("lifted here, the phone rang");
        String drawing = drawing(desk);
        int cursor = drawing.indexOf(">B<");
        assertTrue(cursor > 0, "no cursor");
        assertTrue(drawing.indexOf(">lifted here") > cursor, "the cursor is drawn over the note");
    }

    /** Its ground would hide a part of the dotted line, as if nothing had been read there. */
    @Test
    void theNameOfABatchLaidBesideStandsBeyondItsEnd() {
        ReplayDesk desk = Desks.desk(Desks.tape("demo-own-way", folder));
        desk.lay(Desks.tape("demo-unplugged", folder));
        String drawing = drawing(desk);
        MatchResult dotted = Pattern.compile("<path d=\"([^\"]*)\"[^>]*#a07c00[^>]*>", Pattern.CASE_INSENSITIVE)
                .matcher(drawing)
                .results()
                .findFirst()
                .orElseThrow();
        double end = Pattern.compile("[ML](-?[0-9.]+)")
                .matcher(dotted.group(1))
                .results()
                .mapToDouble(at -> Double.parseDouble(at.group(1)))
                .max()
                .orElseThrow();
        MatchResult name = Pattern.compile("<text x=\"([0-9.]+)\"[^>]*>batch 2<")
                .matcher(drawing)
                .results()
                .findFirst()
                .orElseThrow();
        assertEquals(end + 8, Double.parseDouble(name.group(1)), 1);
    }
}
