package fifthform.monitor.report;

import fifthform.curves.proof.TemperClass;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReportText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What samples of one batch showed: the recordings beside its session that name it. */
final class ProofsOf {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Recording recording;
    private final ZoneId zone;

    ProofsOf(Recording recording, ZoneId zone) {
        this.recording = recording;
        this.zone = zone;
    }

    /** A line each, in the order of time. What cannot be read is said. */
    List<String> lines() {
        Path folder = recording.file().toAbsolutePath().getParent();
        List<String> lines = new ArrayList<>();
        try {
            for (Path file : ProofFile.all(folder)) line(file).ifPresent(lines::add);
        } catch (IOException e) {
            lines.add(ReportText.PROOFS_UNREAD.say(String.valueOf(e.getMessage())));
        }
        return lines;
    }

    private Optional<String> line(Path file) throws IOException {
        Optional<ProofFile.Recorded> read = ProofFile.read(file).fold(Optional::of, problems -> Optional.empty());
        Optional<ProofFile.Recorded> ours = read.filter(
                r -> r.head().session().equals(Optional.of(recording.header().session())));
        if (ours.isEmpty() || ours.get().head().kind() == ProofHead.Kind.MELTED) return Optional.empty();
        String when = MINUTE.format(ours.get().head().start().atZone(zone));
        String what = ours.get().head().kind() == ProofHead.Kind.SMEAR
                ? ReportText.PROOF_SMEAR.say()
                : ReportText.PROOF_SAMPLE.say();
        return Optional.of(ReportText.PROOF.say(when, what, result(ours.get().result())));
    }

    private static String result(Optional<JsonObject> result) {
        if (result.isEmpty()) return ReportText.PROOF_CUT_OFF.say();
        try {
            String word = result.get().text("result");
            for (TemperClass temper : TemperClass.values()) if (temper.word().equals(word)) return InWords.of(temper);
            return word.equals("not-judged") ? ReportText.PROOF_NOT_JUDGED.say() : word;
        } catch (UnreadableJson e) {
            return ReportText.PROOF_CUT_OFF.say();
        }
    }
}
