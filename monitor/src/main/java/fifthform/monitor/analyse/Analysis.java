package fifthform.monitor.analyse;

import fifthform.curves.cue.Held;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.forecast.Coast;
import fifthform.curves.input.Input;
import fifthform.curves.input.Tick;
import fifthform.curves.review.Causes;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Setup;
import fifthform.monitor.intake.Ticks;
import fifthform.monitor.json.JsonLine;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * Steps one batch through the engine as a live session would: an input at a time, with ticks between, nothing from the
 * future.
 */
public final class Analysis {
    /** Longer pauses are ticked through only this far: nothing changes any more once every delay has passed. */
    private static final Duration LONGEST_TICKED = Duration.ofMinutes(20);

    private static final int PLACES = 3;

    private final String session;
    private final Setup setup;
    private final Instant start;
    private State state;
    private Tally tally;
    private Causes causes;

    /**
     * An analysis that has taken nothing yet.
     *
     * @param session the name in every line
     * @param start the time that counts as 0 s
     */
    public Analysis(String session, Setup setup, Instant start) {
        this.session = Objects.requireNonNull(session, "session");
        this.setup = Objects.requireNonNull(setup, "setup");
        this.start = Objects.requireNonNull(start, "start");
        this.state = Engine.start(setup, start);
        this.tally = Tally.start(state);
        this.causes = Causes.start(setup, state);
    }

    /** Takes an input as it stands in a recording, which has its own ticks. */
    public void take(Input input) {
        Step step = Engine.step(setup, state, input);
        Setup inForce = step.after().setupInForce(setup);
        tally = tally.with(inForce.recipe(), state, step);
        causes = causes.with(inForce, state, input, step);
        state = step.after();
    }

    /** Takes an input from a file without ticks, after the ticks that a live session would have had before it. */
    public void takeWithTicks(Input input) {
        Instant until = input.at();
        Instant far = state.at().plus(LONGEST_TICKED);
        for (Instant at = state.at().plus(Ticks.EVERY);
                at.isBefore(until) && at.isBefore(far);
                at = at.plus(Ticks.EVERY)) {
            take(new Tick(at));
        }
        take(input);
    }

    /** The line for the reading just taken. */
    public String line(String timeText) {
        return ReadingLine.of(session, timeText, state);
    }

    /** The closing line. */
    public String summary() {
        return summary(List.of());
    }

    /** The closing line, with the sessions that were made from this batch's bars. */
    public String summary(List<String> againIn) {
        Setup inForce = state.setupInForce(setup);
        JsonLine line = new JsonLine()
                .text("session", session)
                .object("summary", BatchFigures.of(inForce, tally, start))
                .object("bowl", bowl(inForce.bowl()))
                .objects(
                        "causes",
                        causes.all().stream().map(c -> CauseLine.of(c, start)).toList())
                .text("begins", setup.beginning().word());
        setup.beginning().again().ifPresent(from -> line.text("again", from));
        if (!againIn.isEmpty()) line.texts("again_in", againIn);
        setup.holding()
                .ifPresent(plan -> line.object("hold", hold(plan, state.cues().held())));
        return line.end();
    }

    /** What was planned, and what came of it. */
    private JsonLine hold(Holding plan, Held held) {
        JsonLine line = new JsonLine()
                .number("planned_s", BatchFigures.seconds(plan.time()), PLACES)
                .text("warm_by", plan.warmth().word())
                .number("held_s", held.since().isPresent() ? BatchFigures.seconds(held.time(state.at())) : 0, PLACES);
        if (held.since().isPresent()) line.number("in_range_fraction", held.insideFraction(), PLACES);
        return line;
    }

    /** Which bowl it was, and what is known of its coast by now. */
    private JsonLine bowl(Bowl bowl) {
        Coast coast = state.coasting().coast();
        JsonLine line = new JsonLine()
                .text("name", bowl.id())
                .text("material", bowl.material().word())
                .number("amount_g", bowl.amountGrams())
                .number("coast_s", coast.seconds(), PLACES)
                .number("log_spread", coast.logSpread(), PLACES)
                .whole("lifts", coast.liftsSeen());
        state.coasting().bowl().doubt().ifPresent(like -> line.text("like", like.word()));
        return line;
    }

    public State state() {
        return state;
    }

    /** What went wrong, first the first. */
    public Causes causes() {
        return causes;
    }

    public Tally tally() {
        return tally;
    }
}
