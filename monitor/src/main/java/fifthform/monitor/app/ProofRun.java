package fifthform.monitor.app;

import fifthform.curves.probecheck.CheckInput;
import fifthform.curves.probecheck.CheckInput.Enter;
import fifthform.curves.probecheck.CheckInput.Reading;
import fifthform.curves.probecheck.Target;
import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Proof;
import fifthform.curves.proof.ProofEvent;
import fifthform.curves.setup.Correction;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.texts.ProofText;
import fifthform.probe.link.LinkException;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Leads the maker through one cooling of a sample, and records it. */
final class ProofRun {
    private static final Duration LINES_EVERY = Duration.ofSeconds(15);

    private final CheckDesk desk;
    private final ProofSubject subject;
    private final ProofFile record;
    private final Function<Proof, Optional<String>> soFar;
    private Optional<Instant> lastLine = Optional.empty();
    private Optional<String> lastSaid = Optional.empty();

    /** @param soFar what a curve says that is not at its end */
    ProofRun(CheckDesk desk, ProofSubject subject, ProofFile record, Function<Proof, Optional<String>> soFar) {
        this.desk = Objects.requireNonNull(desk, "desk");
        this.subject = Objects.requireNonNull(subject, "subject");
        this.record = Objects.requireNonNull(record, "record");
        this.soFar = Objects.requireNonNull(soFar, "soFar");
    }

    /** A cooling, and what else is known of it. */
    record Cooled(Proof proof, Circumstances around) {}

    /**
     * From the ice bath to the cold sample.
     *
     * @param saidBath what the maker measured before; then the bath is not measured here
     */
    Cooled cool(CheckEar ear, List<String> notices, Runnable take, Circumstances around, OptionalDouble saidBath)
            throws Refusal, InterruptedException, IOException {
        Correction correction = subject.probe().before();
        Circumstances with = around;
        if (saidBath.isPresent()) with = around.withBath(saidBath.getAsDouble());
        else {
            CheckRun.Ended bath =
                    new CheckRun(desk).point(subject.probe(), ear, Target.ice(), ProofText.STEP_1_OF_2_ICE_BATH.say());
            if (bath.point().isEmpty())
                throw new Refusal(Exit.ANSWER_IS_NO, ProofText.THE_ICE_BATH_WAS_NOT_MEASURED.say(bath.why(desk)));
            double reads = bath.point().get().readCelsius();
            if (correction.isChecked()) with = around.withBath(correction.apply(reads));
            else {
                // Ice water is 0 °C; what an unchecked probe reads there is its own error.
                correction = new Correction(1, -reads, 0.5, Optional.empty());
                with = around.withBath(0);
                desk.say(ProofText.THIS_PROBE_WAS_NEVER_CHECKED.say(desk.celsius(reads)));
            }
        }
        record.bath(with.bathCelsius().orElse(0));
        Proof cooled = sample(ear, notices, take, with, correction);
        Optional<String> ice = subject.probe().kind() == CheckSubject.Kind.PRACTICE
                ? Optional.of("")
                : desk.ask(ProofText.IS_THERE_STILL_ICE_IN_THE.say());
        if (ice.isPresent()) {
            boolean left = !ice.get().toLowerCase(Locale.ROOT).startsWith("n");
            record.iceLeft(left);
            with = with.withIceLeft(left);
        }
        return new Cooled(cooled, with);
    }

    private Proof sample(CheckEar ear, List<String> notices, Runnable take, Circumstances around, Correction correction)
            throws Refusal, InterruptedException, IOException {
        desk.say("");
        desk.say(ProofText.STEP_2_OF_2_THE_SAMPLE.say());
        notices.forEach(line -> desk.say("  " + line));
        desk.say(ProofText.IT_BEGINS_AND_ENDS_BY_ITSELF.say(
                desk.celsius(8 + around.bathOrIceCelsius()),
                desk.manner() == CheckDesk.Manner.AT_A_TERMINAL ? ProofText.ENTER_ENDS_IT_SOONER.say() : ""));
        take.run();
        Proof proof = Proof.in(around.bathOrIceCelsius());
        Instant at = Instant.MIN;
        while (!proof.isOver()) {
            Optional<List<CheckInput>> heard = listen(ear);
            if (heard.isEmpty()) proof = tell(proof.ended(at));
            for (CheckInput input : heard.orElse(List.of())) {
                at = input.at();
                CheckInput given = input instanceof Reading r ? corrected(r, correction) : input;
                Proof before = proof;
                proof = tell(proof.next(given));
                if (given instanceof Reading r) {
                    keep(before, proof);
                    if (!proof.isOver()) value(at, r.celsius(), proof);
                }
            }
            if (heard.isPresent() && desk.entered()) proof = tell(proof.next(new Enter(at)));
        }
        return proof;
    }

    private static Reading corrected(Reading reading, Correction correction) {
        double celsius = Math.max(-20, Math.min(150, correction.apply(reading.celsius())));
        return new Reading(reading.at(), celsius, reading.stepSigmaKelvin());
    }

    /** Each reading goes to the file when it comes. */
    private void keep(Proof before, Proof after) throws IOException {
        if (after.readings().isEmpty()) return;
        CurvePoint last = after.readings().get(after.readings().size() - 1);
        boolean isNew = before.readings().isEmpty()
                || !before.readings().get(before.readings().size() - 1).equals(last);
        if (isNew) record.reading(last);
    }

    private Proof tell(Proof.Step step) {
        for (ProofEvent event : step.events()) {
            if (event instanceof ProofEvent.Dipped dipped)
                desk.say(ProofText.IN_THE_ICE_FROM.say(desk.celsius(dipped.startCelsius())));
            if (event instanceof ProofEvent.BendPassed) {
                Optional<String> words = soFar.apply(step.after());
                if (words.isPresent() && !words.equals(lastSaid)) desk.say(ProofText.SO_FAR.say(words.get()));
                lastSaid = words;
            }
        }
        return step.after();
    }

    private void value(Instant at, double celsius, Proof proof) {
        boolean lines = desk.manner() == CheckDesk.Manner.IN_LINES;
        boolean soon = lastLine.filter(last -> Duration.between(last, at).compareTo(LINES_EVERY) < 0)
                .isPresent();
        if (lines && soon) return;
        lastLine = Optional.of(at);
        String minutes = proof.course()
                .map(c -> ProofText.IN_THE_ICE.say(ProofReport.minutes(since(proof, c.dipSeconds()))))
                .orElse("");
        desk.value(at, desk.celsius(celsius) + minutes + "   " + words(proof));
    }

    private static double since(Proof proof, double seconds) {
        return proof.readings().get(proof.readings().size() - 1).seconds() - seconds;
    }

    private static String words(Proof proof) {
        return switch (proof.stage()) {
            case BEFORE_ICE -> ProofText.WAITING_FOR_THE_ICE.say();
            case FALLING -> ProofText.COOLING.say();
            case BEND_PASSED -> ProofText.BEND_PASSED_COOLING_ON.say();
            case ENDED -> "";
        };
    }

    private Optional<List<CheckInput>> listen(CheckEar ear) throws Refusal, InterruptedException {
        try {
            return ear.listen();
        } catch (LinkException e) {
            throw new Refusal(
                    Exit.NO_PROBE,
                    ProofText.THE_PROOF_IS_NOT_FINISHED_WHAT.say(
                            subject.probe().place(), e.getMessage(), record.file(), e.whatToDo()));
        }
    }
}
