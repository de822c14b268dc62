package fifthform.simulator.bench;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.Tick;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A batch as a pure function from moment to moment, two readings a second, without bytes: kitchen → reading → program →
 * maker. {@link BatchRun} is the same through adapters, their faults and their bytes.
 *
 * @param kitchen the physics
 */
public record Batch(Kitchen kitchen) {
    /** From moment to moment: one reading of the bowl, two a second as adapters of this trade give. */
    public static final Duration STEP = Duration.ofMillis(500);

    /** Between two readings the program is told once that time passes, as in a live session. */
    private static final Duration QUIET = Duration.ofMillis(250);

    /** The bath is read at every second step. */
    private static final int BATH_STEPS = 2;

    /** No batch is followed longer; makers run out of patience well before. Our own choice. */
    public static final Duration LONGEST = Duration.ofHours(3);

    public Batch {
        Objects.requireNonNull(kitchen, "kitchen");
    }

    /** The first moment of a scenario's batch. */
    public static Moment beginning(Scenario scenario, Luck luck, Program program) {
        Maker maker = scenario.maker().with(scenario.habits(), luck.branch(0));
        KitchenState start = scenario.begins();
        return new Moment(
                BatchRun.BEGINS,
                0,
                start,
                Hands.leaving(Spot.TABLE),
                maker,
                program,
                OptionalDouble.empty(),
                new Gauge(BatchRun.BOWL, scenario.bowlAdapter(), luck.branch(1)),
                new Gauge(BatchRun.BATH, AdapterSettings.USUAL_BATH, luck.branch(2)));
    }

    /** What half a second led to. */
    public Passed next(Moment before) {
        Next next = before.maker().next(new KitchenView(before.at(), before.shownCelsius()));
        Acts acts = next.acts();
        KitchenState kitchenAfter = acts.on(kitchen, before.kitchen(), STEP);
        Instant at = before.at().plus(STEP);
        double shownCelsius = before.bowl().shows(kitchenAfter.tipCelsius());
        boolean bathRead = before.steps() % BATH_STEPS == BATH_STEPS - 1;
        Gauge bath = bathRead ? before.bath().after() : before.bath();
        Moment undisturbed = new Moment(
                at,
                before.steps() + 1,
                kitchenAfter,
                acts.hands(),
                next.after(),
                before.program(),
                OptionalDouble.of(shownCelsius),
                before.bowl().after(),
                bath);
        if (before.program() == Program.SILENT) return new Passed(undisturbed, List.of());
        List<Input> inputs = new ArrayList<>(4);
        inputs.addAll(acts.presses());
        inputs.add(new Tick(before.at().plus(QUIET)));
        inputs.add(before.bowl().sample(at, shownCelsius));
        if (bathRead) {
            inputs.add(before.bath().sample(at, before.bath().shows(kitchenAfter.bathTipCelsius())));
        }
        return advised(undisturbed, inputs);
    }

    private static Passed advised(Moment moment, List<Input> inputs) {
        Program program = moment.program();
        Maker maker = moment.maker();
        List<Event> events = new ArrayList<>(0);
        for (Input input : inputs) {
            Program.Heard heard = program.hear(input);
            program = heard.after();
            for (Event event : heard.events()) {
                events.add(event);
                maker = maker.told(event);
            }
        }
        return new Passed(moment.advisedBy(program).inHandsOf(maker), events);
    }

    /** From this moment to the end, or to {@link #LONGEST}. */
    public Ending run(Moment from, Recipe recipe) {
        BatchWatch watch = new BatchWatch(recipe);
        watch.saw(from.at(), from.kitchen().bulkCelsius(), from.hands().spot());
        Moment moment = from;
        Instant last = from.at().plus(LONGEST);
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            watch.forecast(moment.program().turnIfLiftedCelsius());
            Passed passed = next(moment);
            moment = passed.after();
            watch.saw(
                    moment.at(), moment.kitchen().bulkCelsius(), moment.hands().spot());
            passed.events().forEach(watch::heard);
        }
        return watch.ending();
    }

    /**
     * What half a second led to.
     *
     * @param after the moment then
     * @param events what the program said
     */
    public record Passed(Moment after, List<Event> events) {
        public Passed {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
        }
    }
}
