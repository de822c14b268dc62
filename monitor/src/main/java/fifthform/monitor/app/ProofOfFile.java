package fifthform.monitor.app;

import fifthform.curves.proof.Circumstances;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.texts.ProofText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** A curve that was recorded before: a recording of ours, or a table. */
final class ProofOfFile {
    private final ProofTask task;
    private final Path curve;

    ProofOfFile(ProofTask task, Path curve) {
        this.task = Objects.requireNonNull(task, "task");
        this.curve = Objects.requireNonNull(curve, "curve");
    }

    /** Judges it; nothing is kept. */
    Exit judge() throws Refusal {
        if (!Files.isRegularFile(curve))
            throw new Refusal(
                    Exit.FILE,
                    ProofText.NOTHING_WAS_JUDGED_CHECK_THE.say(
                            Files.exists(curve)
                                    ? ProofText.IS_NO_FILE.say(curve)
                                    : ProofText.THERE_IS_NO_FILE.say(curve)));
        return curve.toString().endsWith(ProofFile.ENDING) ? judgeRecording() : judgeTable();
    }

    /** A recording of ours knows its chocolate, its cup and its bath. */
    private Exit judgeRecording() throws Refusal {
        ProofFile.Recorded recorded = recorded();
        ProofHead head = recorded.head();
        if (head.kind() == ProofHead.Kind.SMEAR)
            throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.IS_A_SMEAR_AND_HAS_NO.say(curve));
        if (recorded.lost() > 0) task.err().println(ProofText.LINES_OF_IT_ARE_DAMAGED_AND.say(recorded.lost()));
        ProofPlace place = task.place(head);
        boolean melted = head.kind() == ProofHead.Kind.MELTED;
        Circumstances around = melted ? Circumstances.ofMelted() : Circumstances.ofSample(place.recipe());
        if (recorded.bathCelsius().isPresent())
            around = around.withBath(recorded.bathCelsius().getAsDouble());
        if (recorded.iceLeft().isPresent())
            around = around.withIceLeft(recorded.iceLeft().get());
        around = introduced(place, around);
        ProofJudge judge = new ProofJudge(task.desk());
        return told(
                melted
                        ? judge.calibrated(recorded.readings(), around, place)
                        : judge.judged(recorded.readings(), around, place),
                place);
    }

    private Exit judgeTable() throws Refusal {
        ProofPlace place = task.place(false);
        ProofTable table = ProofTable.read(curve, task.err());
        Circumstances around = Circumstances.ofSample(place.recipe());
        if (table.bathCelsius().isPresent())
            around = around.withBath(table.bathCelsius().getAsDouble());
        around = introduced(place, around);
        ProofJudge judge = new ProofJudge(task.desk());
        return told(
                table.spoilt().isPresent()
                        ? judge.refused(table.spoilt().get())
                        : judge.judged(table.points(), around, place),
                place);
    }

    private Circumstances introduced(ProofPlace place, Circumstances around) {
        Circumstances with =
                task.bath().isEmpty() ? around : around.withBath(task.bath().getAsDouble());
        task.desk()
                .say(ProofText.PROOF_OF_TEMPER_PROOF_OF_FILE.say(
                        curve.getFileName(), place.recipe().name(), ProofTask.words(place.cup())));
        if (with.bathCelsius().isEmpty())
            task.desk()
                    .say(ProofText.ITS_BATH_WAS_NOT_MEASURED_AND.say(task.desk().celsius(0)));
        return with;
    }

    private Exit told(ProofAnswer answer, ProofPlace place) {
        if (task.json()) {
            JsonLine line = new JsonLine()
                    .text("proof", String.valueOf(curve.getFileName()))
                    .text("chocolate", place.recipe().id());
            answer.tell(line);
            task.out().println(line.end());
        }
        return answer.exit();
    }

    private ProofFile.Recorded recorded() throws Refusal {
        try {
            return Answers.orRefuse(ProofFile.read(curve), Exit.FILE);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, ProofText.CANNOT_BE_READ_NOTHING_WAS.say(curve, e.getMessage()));
        }
    }
}
