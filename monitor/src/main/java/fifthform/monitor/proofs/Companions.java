package fifthform.monitor.proofs;

import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.store.SessionFiles;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What belongs to a session and lies beside it. */
public final class Companions {
    private static final String LOCK_OF_A_SESSION = SessionFiles.ENDING + ".lock";

    private Companions() {}

    /** What lies beside the session under its name, and the proofs that name it; not the session itself. */
    public static List<Path> of(Path session) throws IOException {
        String name = SessionFiles.name(session);
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(session.toAbsolutePath().getParent())) {
            files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().equals(session.getFileName()))
                    .filter(file -> !file.toString().endsWith(LOCK_OF_A_SESSION))
                    .filter(file -> String.valueOf(file.getFileName()).startsWith(name + ".") && !isSession(file)
                            || proves(file, name))
                    .forEach(found::add);
        }
        return found;
    }

    private static boolean isSession(Path file) {
        return file.toString().endsWith(SessionFiles.ENDING);
    }

    private static boolean proves(Path file, String session) {
        if (!file.toString().endsWith(ProofFile.ENDING)) return false;
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            String head = lines.readLine();
            return head != null
                    && JsonObject.parse(head)
                            .optionalText("session")
                            .filter(session::equals)
                            .isPresent();
        } catch (IOException | UnreadableJson e) {
            return false;
        }
    }
}
