package fifthform.monitor.app;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.texts.ProofText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The smear tests that were recorded. They belong to no cup, so their recordings are all that is known of them. */
final class KeptSmears {
    private KeptSmears() {}

    /**
     * One of them.
     *
     * @param head what it was of
     * @param result the word of its class
     * @param minutes until it was set, or how long it was watched
     * @param isSet whether it was set then
     * @param look the word of how it looked
     */
    record Kept(ProofHead head, String result, double minutes, boolean isSet, String look) {
        String row() {
            return ProofText.BY_THE_SMEAR.say(
                    head.name(),
                    LocalDate.ofInstant(head.start(), ZoneId.systemDefault()),
                    result.replace('-', ' '),
                    isSet ? ProofText.SET_AFTER.say() : ProofText.NOT_SET_AFTER.say(),
                    ProofReport.minutes(60 * minutes),
                    look.replace('-', ' '));
        }

        String line() {
            return new JsonLine()
                    .text("chocolate", head.chocolate())
                    .object(
                            ProofText.SMEAR.say(),
                            new JsonLine()
                                    .text("proof", head.name())
                                    .text("at", head.start().toString())
                                    .text("result", result)
                                    .number("minutes", minutes, 2)
                                    .raw("set", String.valueOf(isSet))
                                    .text("look", look))
                    .end();
        }
    }

    /** In the order of their names, which is that of time. What cannot be read is passed over; it stays where it is. */
    static List<Kept> in(Path folder) {
        List<Kept> kept = new ArrayList<>();
        if (!Files.isDirectory(folder)) return kept;
        try {
            for (Path file : ProofFile.all(folder)) read(file).ifPresent(kept::add);
        } catch (IOException e) {
            return kept;
        }
        return kept;
    }

    private static Optional<Kept> read(Path file) {
        try {
            Optional<ProofFile.Recorded> recorded =
                    ProofFile.read(file).fold(Optional::of, problems -> Optional.empty());
            if (recorded.isEmpty() || recorded.get().head().kind() != ProofHead.Kind.SMEAR) return Optional.empty();
            if (recorded.get().result().isEmpty()) return Optional.empty();
            var result = recorded.get().result().get();
            return Optional.of(new Kept(
                    recorded.get().head(),
                    result.text("result"),
                    result.number("minutes"),
                    result.flag("set"),
                    result.text("look").toLowerCase(Locale.ROOT)));
        } catch (IOException | UnreadableJson e) {
            return Optional.empty();
        }
    }
}
