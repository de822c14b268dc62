package fifthform.simulator.bench;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** One batch of a fleet with readings that are ugly in one way, and what the program made of them. */
final class UglyBatch {
    private static final Duration QUIET = Duration.ofMillis(250);

    /** As wide as this a minute ahead, the maker is told that little is known (own choice; the working range has 1 K). */
    static final double WIDE_KELVIN = 1.5;

    /** And by so much wider than before the episode: over water the band is wide at the best of times. */
    private static final double WIDER = 1.5;

    /** A number as wrong as this misleads: more than the working range is wide. */
    private static final double DEPARTED_KELVIN = 1.0;

    /** So long after an alarm the chocolate may still come to what it warned of. */
    private static final int LOOK_STEPS = 480;

    private static final int NEAR_STEPS = 60;

    private final Scenario scenario;
    private final Recipe recipe;
    private final Ugliness ugliness;
    private final UglyReport report;
    private final List<Double> felt = new ArrayList<>();
    private final Map<AlarmId, List<Integer>> urgent = new EnumMap<>(AlarmId.class);
    private Program program;
    private Moment moment;
    private long begun = -1;
    private boolean waiting;
    private double calmWidth;

    private UglyBatch(Scenario scenario, Luck luck, Ugliness ugliness, UglyReport report) {
        this.scenario = scenario;
        this.recipe = RecipeShelf.recipe(scenario.chocolate());
        this.ugliness = ugliness;
        this.report = report;
        EngineProgram first = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS);
        this.program = first;
        this.moment = Batch.beginning(scenario, luck, first);
    }

    static void run(Fleet fleet, long number, Ugliness ugliness, UglyReport report) {
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
        new UglyBatch(fleet.draw(number), luck, ugliness, report).run();
    }

    private void run() {
        while (!moment.maker().done() && moment.steps() < 3 * 7200) step();
        report.batch(moment.steps() * 0.5 / 3600);
        urgent.forEach((alarm, steps) -> steps.forEach(step -> {
            if (!isTrue(alarm, step)) report.falseUrgent(alarm, scenario.id() + " at " + step * 0.5 + " s");
        }));
    }

    private void step() {
        long step = moment.steps();
        Next next = moment.maker().next(new KitchenView(moment.at(), moment.shownCelsius()));
        Acts acts = next.acts();
        Hands hands = acts.hands();
        boolean unsaid = acts.probe() == Acts.Probe.IN_THE_CHOCOLATE;
        Hands ugly = unsaid ? hands.probeAt(ugliness.place(step, hands.probe())) : hands;
        Acts done = new Acts(
                ugly, acts.probe(), acts.seedGrams(), acts.splashGrams(), acts.bathWarmerKelvin(), acts.presses());
        KitchenState after = done.on(scenario.kitchen(), moment.kitchen(), Batch.STEP);
        double shown = moment.bowl().shows(after.tipCelsius());
        Sample sample = moment.bowl().sample(moment.at().plus(Batch.STEP), shown);
        felt.add(after.bulkCelsius() + scenario.bowlAdapter().offsetKelvin());
        List<Input> inputs = new ArrayList<>(acts.presses());
        inputs.add(new Tick(moment.at().plus(QUIET)));
        Input heard = ugliness.heard(sample, step);
        inputs.add(heard);
        Maker maker = next.after();
        for (Input input : inputs) {
            Program.Heard said = program.hear(input);
            program = said.after();
            for (Event event : said.events()) {
                heard(event, step);
                maker = maker.told(event);
            }
        }
        double seen = heard instanceof Sample s ? s.tipCelsius() : shown;
        look(step, seen, unsaid);
        moment = new Moment(
                sample.at(),
                step + 1,
                after,
                hands,
                maker,
                program,
                OptionalDouble.of(shown),
                moment.bowl().after(),
                moment.bath());
    }

    private void heard(Event event, long step) {
        if (event instanceof Event.AlarmRaised raised && raised.priority() == Priority.URGENT) {
            urgent.computeIfAbsent(raised.alarm(), id -> new ArrayList<>()).add((int) step);
        }
    }

    /** Until when the program says of an episode that it is not sure. */
    private void look(long step, double seenCelsius, boolean unsaid) {
        State state = ((EngineProgram) program).state();
        if (ugliness.begins(step) && step >= Ugliness.PERIOD_STEPS && unsaid) {
            begun = -1;
            waiting = true;
            calmWidth = width(state);
        }
        boolean departed = Math.abs(seenCelsius - felt.get(felt.size() - 1)) > DEPARTED_KELVIN;
        if (waiting && departed) {
            begun = step;
            waiting = false;
            report.episode();
        }
        if (begun >= 0 && width(state) >= Math.max(WIDE_KELVIN, WIDER * calmWidth)) {
            report.noticed((step - begun) * 0.5);
            begun = -1;
        }
        boolean over = waitingOver(step) && begun >= 0;
        if (over) {
            report.unnoticed();
            begun = -1;
        }
        boolean sure = state.forecast().isPresent();
        if (departedWhileSure(seenCelsius, sure)) report.wrongAndSure(0.5);
    }

    private boolean waitingOver(long step) {
        return (step - begun) * 0.5 > Ugliness.EPISODE.toSeconds();
    }

    private boolean departedWhileSure(double seenCelsius, boolean sure) {
        return sure && Math.abs(seenCelsius - felt.get(felt.size() - 1)) > DEPARTED_KELVIN;
    }

    /** Of the band a minute ahead, K; endless where there is no forecast. */
    private static double width(State state) {
        return state.forecast()
                .map(f -> f.at(Duration.ofSeconds(60)))
                .map(o -> o.upperCelsius() - o.lowerCelsius())
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether the chocolate, in the scale of its probe, came to what an urgent alarm said. */
    private boolean isTrue(AlarmId alarm, int step) {
        double high = recipe.work().range().highCelsius();
        return switch (alarm) {
            case HEADING_OVER -> highest(step, LOOK_STEPS) > high;
            case OVER_RANGE -> highest(step, NEAR_STEPS) > high;
            case NEAR_MELT_OUT -> highest(step, NEAR_STEPS) > recipe.meltOut().guardCelsius() - 0.3;
            case MELT_OUT -> highest(step, NEAR_STEPS) > recipe.meltOut().limitCelsius() - 0.3;
            case MELT_TOO_HOT -> highest(step, NEAR_STEPS) > recipe.scorchCelsius() - 0.3;
            case PROBE_FAULT, NO_READING -> false;
            case HEADING_UNDER, TOO_COOL, OVER_COOLED, BATH_HOT, READING_DOUBTFUL, NOT_RECORDING, PROBE_OUT -> true;
        };
    }

    private double highest(int step, int steps) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = Math.max(0, step - NEAR_STEPS); i < Math.min(felt.size(), step + steps); i++) {
            highest = Math.max(highest, felt.get(i));
        }
        return highest;
    }
}
