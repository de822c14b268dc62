package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.BarsText;
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
                    BarsText.IT_CANNOT_BE_READ.say(e.getMessage()),
                    BarsText.CHECK_THAT_IT_IS_A_FILE.say()));
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) continue;
            try {
                taking.take(JsonObject.parse(lines.get(i)));
            } catch (UnreadableJson | RuntimeException e) {
                problems.add(new Problem(
                        BarsText.FILE_AND_LINE.say(file, i + 1),
                        BarsText.THIS_LINE_CANNOT_BE_READ_AND.say(e.getMessage()),
                        BarsText.THE_LINE_STAYS_AS_IT_IS.say()));
            }
        }
    }
}
