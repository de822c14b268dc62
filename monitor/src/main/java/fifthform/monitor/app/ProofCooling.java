package fifthform.monitor.app;

import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Fitness;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.Proof;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProofText;
import fifthform.probe.link.LinkException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A sample, or melted chocolate, is cooled before the program's eyes. */
final class ProofCooling {
    private final ProofTask task;
    private final Finding probes;
    private final boolean calibrate;

    /**
     * @param probes finds the probe
     * @param calibrate melted chocolate, to learn how the cup cools
     */
    ProofCooling(ProofTask task, Finding probes, boolean calibrate) {
        this.task = Objects.requireNonNull(task, "task");
        this.probes = Objects.requireNonNull(probes, "probes");
        this.calibrate = calibrate;
    }

    /** Finds a probe among those that are known. */
    interface Finding {
        ProofSubject find(Adapters.Loaded known) throws Refusal, InterruptedException;
    }

    /** Leads through it, and keeps what came of it. */
    Exit run() throws Refusal, InterruptedException, IOException {
        Adapters adapters = new Adapters(task.folders().probes());
        Adapters.Loaded loaded = adapters.load();
        loaded.problems().forEach(task.err()::println);
        ProofSubject subject = probes.find(loaded);
        boolean real = subject.probe().kind() == CheckSubject.Kind.REAL;
        ProofPlace place = task.place(real);
        ProofHead.Kind kind = calibrate ? ProofHead.Kind.MELTED : ProofHead.Kind.SAMPLE;
        welcome(subject, place);
        Circumstances around = calibrate ? Circumstances.ofMelted() : Circumstances.ofSample(place.recipe());
        List<String> notices = calibrate
                ? ProofNotices.melted(ProofText.FROM_TO_AS_WARM.say(
                        task.desk().celsius(33), task.desk().celsius(35)))
                : ProofNotices.sample(ProofText.FROM_TO_AS_WARM.say(
                        task.desk().celsius(place.recipe().work().range().lowCelsius()),
                        task.desk().celsius(place.recipe().work().range().highCelsius())));
        ProofRun.Cooled cooled;
        Path folder = real ? task.folders().sessions() : Files.createTempDirectory("fifthform");
        try (ProofFile record = ProofFile.begin(folder, task.head(kind, place, origin(subject)));
                CheckEar ear = open(subject.probe())) {
            Runnable take = calibrate ? subject.takeMelted() : subject.takeSample();
            cooled = new ProofRun(task.desk(), subject, record, soFar(place, around))
                    .cool(ear, notices, take, around, task.bath());
            Exit exit = ended(cooled.proof().readings(), cooled.around(), place, real, record);
            if (real) task.desk().say(ProofText.RECORDED_IN.say(record.file()));
            else
                task.desk()
                        .say(ProofText.NOTHING_IS_KEPT_THIS_WAS_WITH.say(
                                origin(subject).equals("simulated")
                                        ? ProofText.PRACTICE_ITSELF.say()
                                        : ProofText.A_RECORDING.say()));
            return exit;
        } finally {
            if (!real) deleted(folder);
        }
    }

    /** The maker's bowl waits: what the bend says, or what spoils it, is told before the sample is cold. */
    private Function<Proof, Optional<String>> soFar(ProofPlace place, Circumstances around) {
        if (calibrate) return proof -> Optional.empty();
        Measure measure = place.cup().measure(place.fat(), 0);
        Circumstances with = place.cup().traits().map(around::withCup).orElse(around);
        return proof -> {
            List<Unfit> unfit = Fitness.of(proof.curve(), with).stream()
                    .filter(u -> u != Unfit.TOO_SHORT)
                    .toList();
            if (!unfit.isEmpty()) return Optional.of(ProofWords.of(unfit.get(0)));
            return proof.course()
                    .map(course -> Verdict.of(course, measure))
                    .map(v -> ProofText.LEAVE_IT_IN_TO_BE_SURE.say(InWords.of(v.temper())
                            + v.bend()
                                    .map(b -> ProofText.BENT_AT.say(ProofReport.bend(b, task.desk())))
                                    .orElse("")));
        };
    }

    private static void deleted(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) Files.delete(file);
        }
        Files.delete(folder);
    }

    private Exit ended(
            List<CurvePoint> readings, Circumstances around, ProofPlace place, boolean keep, ProofFile record)
            throws Refusal, IOException {
        ProofJudge judge = new ProofJudge(task.desk());
        ProofAnswer answer =
                calibrate ? judge.calibrated(readings, around, place) : judge.judged(readings, around, place);
        JsonLine line = new JsonLine().text("k", "z");
        answer.tell(line);
        record.line(line);
        if (keep) {
            Instant now = Instant.now();
            boolean changes = answer.isOne() || place.cup().grams().isPresent();
            KeptCup after = changes
                    ? task.cups()
                            .change(
                                    place.cup(),
                                    cup -> answer.keep(place.weighed(cup), record.name(), place.session(), now))
                    : place.cup();
            if (calibrate && answer.run().isPresent()) judge.tellTwoRuns(after);
        }
        if (task.json()) {
            JsonLine told = new JsonLine()
                    .text("proof", record.name())
                    .text("chocolate", place.recipe().id());
            place.session().ifPresent(s -> told.text("session", s));
            answer.tell(told);
            task.out().println(told.end());
        }
        return answer.exit();
    }

    private static String origin(ProofSubject subject) {
        return switch (subject.probe().kind()) {
            case REAL -> "real";
            case RECORDED -> "recorded";
            case PRACTICE -> "simulated";
        };
    }

    private void welcome(ProofSubject subject, ProofPlace place) {
        String what = calibrate ? ProofText.CALIBRATION_OF_A_CUP.say() : ProofText.PROOF_OF_TEMPER.say();
        task.desk()
                .say(
                        subject.probe().kind() == CheckSubject.Kind.PRACTICE
                                ? ProofText.PRACTICE_AN_INVENTED_BOWL_CUP.say(what)
                                : what + " · " + subject.probe().place() + " · "
                                        + place.recipe().name() + " · " + ProofTask.words(place.cup()));
        place.session().ifPresent(s -> task.desk().say(ProofText.IT_BELONGS_TO_THE_SESSION.say(s)));
    }

    private static CheckEar open(CheckSubject subject) throws Refusal {
        try {
            return CheckEar.open(subject);
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, ProofText.NOTHING_WAS_PROVED.say(e.getMessage(), e.whatToDo()));
        }
    }
}
