package fifthform.monitor.store;

import fifthform.curves.setup.Beginning;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Which batches of a folder were made from the bars of which: each header names the one before it, none the one after. */
public final class MadeAgain {
    /** Stands in the headers of such batches only, so that no other one is parsed. */
    private static final String KEY = "\"again\":";

    private MadeAgain() {}

    /**
     * The sessions that were made from this one's bars, oldest first; none where the folder cannot be listed.
     *
     * @param file the failed batch
     * @param session its name, as its header has it
     */
    public static List<String> from(Path file, String session) {
        List<String> made = new ArrayList<>();
        try {
            for (Path each : new SessionFiles(file.toAbsolutePath().getParent()).all())
                if (isFrom(each, session)) made.add(SessionFiles.name(each));
        } catch (StoreException e) {
            return List.of();
        }
        Collections.reverse(made);
        return List.copyOf(made);
    }

    private static boolean isFrom(Path file, String session) {
        try (LineScan scan = LineScan.of(file)) {
            if (scan.next().filter(line -> line.text().contains(KEY)).isEmpty()) return false;
        } catch (IOException e) {
            return false;
        }
        Beginning beginning =
                JournalReader.readHeader(file).fold(header -> header.setup().beginning(), problems -> Beginning.WHOLE);
        return beginning.again().filter(session::equals).isPresent();
    }
}
