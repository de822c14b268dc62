package fifthform.monitor.replay;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Recorded;
import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Kind;
import fifthform.curves.review.Causes;
import fifthform.curves.whatif.Answer;
import fifthform.curves.whatif.Answer.Refused;
import fifthform.curves.whatif.Answer.Simulated;
import fifthform.curves.whatif.Change;
import fifthform.curves.whatif.PastBatch;
import fifthform.curves.whatif.PastLift;
import fifthform.curves.whatif.Rerun;
import fifthform.curves.whatif.Trail;
import fifthform.monitor.model.AgainWords;
import fifthform.monitor.model.CauseWords;
import fifthform.monitor.model.ClosingLine;
import fifthform.monitor.model.HoldLine;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.model.WhatIfWords;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.MadeAgain;
import fifthform.monitor.texts.ReplayText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The causes of what went wrong, first the first, and what another act would have led to. One object for one batch. */
public final class CauseFindings implements Findings, WhatIfs {
    /** What is asked where nobody lifted late, s and K. Own choice. */
    private static final double EARLIER_SECONDS = 10;

    private static final double COOLER_KELVIN = 5;

    private final Units units;
    private final Trail trail;
    private State before;
    private Causes causes;

    /** Before the first step of this batch. */
    public CauseFindings(Recording recording, Units units) {
        this.units = units;
        this.trail = new Trail(recording.setup());
        this.before = Engine.start(recording.setup(), recording.start());
        this.causes = Causes.start(recording.setup(), before);
    }

    @Override
    public void follow(Recorded input, SessionSnapshot now, List<Event> events) {
        Step step = new Step(now.state(), events);
        causes = causes.with(now.setup(), before, input.input(), step);
        trail.take(before, step);
        before = now.state();
    }

    @Override
    public String about() {
        return causes.first().isPresent() ? ReplayText.HEADLINE_FIRST.say() : ReplayText.HEADLINE_NOTHING.say();
    }

    @Override
    public List<Finding> found(Recording recording, SessionSnapshot last) {
        CauseWords words = new CauseWords(units, recording.header().zone());
        List<Finding> found = new ArrayList<>();
        for (Cause cause : causes.faults()) found.add(finding(cause, words));
        String end = String.join(
                " ", SurvivedWords.closing(last, units, recording.header().zone()));
        found.add(new Finding(Optional.empty(), ClosingLine.of(last.setup(), last.tally(), units), end));
        found.addAll(links(recording, last));
        for (Cause cause : causes.all()) if (cause.weight() == Cause.Weight.REMARK) found.add(finding(cause, words));
        return found;
    }

    /** The hold that was planned, and the batches before and after this one that its bars belong to. */
    private static List<Finding> links(Recording recording, SessionSnapshot last) {
        List<Finding> links = new ArrayList<>();
        HoldLine.closing(last.setup(), last.state()).ifPresent(words -> links.add(plain(words)));
        AgainWords.links(
                        recording.setup().beginning(),
                        MadeAgain.from(recording.file(), recording.header().session()))
                .forEach(words -> links.add(plain(words)));
        return links;
    }

    private static Finding plain(String words) {
        return new Finding(Optional.empty(), words, "");
    }

    /** The few words before the first stop are the headline, what follows its figures. */
    private static Finding finding(Cause cause, CauseWords words) {
        String[] parts = words.whatAndSaid(cause).split("[;:] ", 2);
        return new Finding(Optional.of(cause.at()), capital(parts[0]), parts.length > 1 ? parts[1] : "");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    @Override
    public List<WhatIf> answers(Recording recording, SessionSnapshot last) {
        PastBatch batch = trail.batch();
        Optional<PastLift> lift = batch.mainLift();
        if (lift.isEmpty()) return List.of();
        int number = lift.get().number();
        WhatIfWords words =
                new WhatIfWords(units, recording.header().zone(), batch.setup().recipe());
        return List.of(
                answer(batch, new Change.LiftMoved(number, -lateSeconds()), words, recording),
                answer(batch, new Change.BathShifted(number, -COOLER_KELVIN), words, recording));
    }

    /** As many seconds as the lift was late, where it was. */
    private double lateSeconds() {
        return causes.all().stream()
                .filter(cause -> cause.kind() == Kind.LIFTED_LATE)
                .flatMap(cause -> cause.off().stream())
                .mapToDouble(late -> Math.max(1, Math.min(Change.LiftMoved.MOST_SECONDS, late.toMillis() / 1e3)))
                .findFirst()
                .orElse(EARLIER_SECONDS);
    }

    private static WhatIf answer(PastBatch batch, Change change, WhatIfWords words, Recording recording) {
        return Rerun.of(batch, change).fold(new Answer.Cases<>() {
            @Override
            public WhatIf simulated(Simulated simulated) {
                List<String> lines = words.lines(simulated);
                return new WhatIf(
                        words.change(change),
                        String.join(" ", lines.subList(1, lines.size())),
                        simulated.curve().stream()
                                .map(m -> new WhatIf.Point(
                                        Duration.between(recording.start(), m.at()),
                                        m.celsius(),
                                        m.lowerCelsius(),
                                        m.upperCelsius()))
                                .toList());
            }

            @Override
            public WhatIf refused(Refused refused) {
                return new WhatIf(words.change(change), String.join(" ", words.lines(refused)), List.of());
            }
        });
    }
}
