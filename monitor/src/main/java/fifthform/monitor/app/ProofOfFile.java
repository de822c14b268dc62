package fifthform.monitor.app;

import fifthform.curves.proof.Circumstances;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
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
                    (Files.exists(curve) ? curve + " is no file" : "There is no file " + curve)
                            + ". Nothing was judged. Check the name and try again.");
        return curve.toString().endsWith(ProofFile.ENDING) ? judgeRecording() : judgeTable();
    }

    /** A recording of ours knows its chocolate, its cup and its bath. */
    private Exit judgeRecording() throws Refusal {
        ProofFile.Recorded recorded = recorded();
        ProofHead head = recorded.head();
        if (head.kind() == ProofHead.Kind.SMEAR)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    curve + " is a smear and has no curve. Nothing was judged. Its result stands in its last line.");
        if (recorded.lost() > 0)
            task.err()
                    .println(
                            recorded.lost() == 1
                                    ? "One line of it is damaged and left out."
                                    : recorded.lost() + " lines of it are damaged and left out.");
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
                .say("Proof of temper · " + curve.getFileName() + " · "
                        + place.recipe().name() + " · " + ProofTask.words(place.cup()));
        if (with.bathCelsius().isEmpty())
            task.desk()
                    .say("  Its bath was not measured and is taken as "
                            + task.desk().celsius(0) + ". A warm one is then not noticed; say it with --bath.");
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
            throw new Refusal(
                    Exit.FILE,
                    curve + " cannot be read (" + e.getMessage()
                            + "). Nothing was judged. Check the name and try again.");
        }
    }
}
