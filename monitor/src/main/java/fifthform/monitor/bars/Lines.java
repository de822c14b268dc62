package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads files to which lines are only ever added: one that cannot be read is passed over and said. */
final class Lines {
    private Lines() {}

    /** Takes one line. */
    interface Taking {
        void take(JsonObject line) throws UnreadableJson;
    }

    static void read(Path file, List<Problem> problems, Taking taking) {
        if (!Files.exists(file)) return;
        List<String> lines;
        try {
            lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            problems.add(new Problem(
                    file.toString(),
                    "It cannot be read (" + e.getMessage() + ").",
                    "Check that it is a file and that you may read it."));
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) continue;
            try {
                taking.take(JsonObject.parse(lines.get(i)));
            } catch (UnreadableJson | RuntimeException e) {
                problems.add(new Problem(
                        file + ", line " + (i + 1),
                        "This line cannot be read (" + e.getMessage() + ") and is passed over.",
                        "The line stays as it is; the others count."));
            }
        }
    }
}
