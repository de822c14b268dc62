package fifthform.monitor.app;

import fifthform.curves.probecheck.CheckInput;
import fifthform.curves.setting.SetInput;
import fifthform.probe.link.LinkException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One probe that is listened to for hours or weeks, corrected as its last check says. A real one that goes away is opened
 * again and again, since nobody stands beside it.
 */
final class QuietEar implements AutoCloseable {
    private static final Duration PAUSE = Duration.ofSeconds(2);

    private final CheckSubject subject;
    private Optional<CheckEar> ear;

    private QuietEar(CheckSubject subject, CheckEar ear) {
        this.subject = subject;
        this.ear = Optional.of(ear);
    }

    /** Opens it; what cannot be opened at the beginning ends the command with the reason. */
    static QuietEar open(CheckSubject subject, String undone) throws Refusal {
        Objects.requireNonNull(subject, "subject");
        try {
            return new QuietEar(subject, CheckEar.open(subject));
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + undone + " " + e.whatToDo());
        }
    }

    /** What one read brings; empty when a recording or a practice place has ended. */
    Optional<List<SetInput>> listen() throws InterruptedException {
        if (ear.isEmpty() && !opened()) {
            Thread.sleep(PAUSE.toMillis());
            return Optional.of(List.of(new SetInput.Passed(Instant.now())));
        }
        try {
            return ear.orElseThrow().listen().map(this::inputs);
        } catch (LinkException gone) {
            close();
            if (subject.kind() != CheckSubject.Kind.REAL) return Optional.empty();
            return Optional.of(List.of(new SetInput.Passed(Instant.now())));
        }
    }

    private boolean opened() {
        try {
            ear = Optional.of(CheckEar.open(subject));
            return true;
        } catch (LinkException stillGone) {
            return false; // it is tried again; the watch tells that nothing was read
        }
    }

    private List<SetInput> inputs(List<CheckInput> heard) {
        List<SetInput> inputs = new ArrayList<>();
        for (CheckInput input : heard) {
            if (input instanceof CheckInput.Reading r) {
                double celsius = subject.before().apply(r.celsius());
                inputs.add(new SetInput.Reading(r.at(), Math.max(-40, Math.min(150, celsius))));
            } else if (input instanceof CheckInput.Passed p) {
                inputs.add(new SetInput.Passed(p.at()));
            }
        }
        return inputs;
    }

    @Override
    public void close() {
        ear.ifPresent(CheckEar::close);
        ear = Optional.empty();
    }
}
