package fifthform.simulator.bench;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Expected.Tempered;
import fifthform.simulator.scenario.Scenario;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;

/**
 * A batch that does not begin with whole chocolate, in a home kitchen whose maker obeys. Temperatures as this probe would
 * read the bulk without lag; crystals as the simulator has them, of all portions together.
 *
 * @param reached whether <i>in range</i> was ever said
 * @param highestCelsius the highest of the bulk from <i>in range</i> on, else of the whole batch
 * @param work the working range
 * @param poured crystals when <i>in range</i> was said; those of the end where it never was
 * @param ended crystals at the end of the pour
 * @param word what the screen said of them when <i>in range</i> was said
 */
record Begun(
        boolean reached, double highestCelsius, CelsiusRange work, Forms poured, Forms ended, Optional<String> word) {
    /** What a fleet's batches begin with. */
    enum Start {
        /** A whole batch, to compare with. */
        WHOLE("solid"),
        /** Bars that bloomed, found at 36 °C, as somebody leaves them who thinks that they are melted. */
        AGAIN("bloomed at 36 C"),
        /** Bars in good temper, as warm as the room. */
        BARS("in temper"),
        /** A kept pour of good temper. */
        KEPT("kept at 30 C");

        private final String begins;

        Start(String begins) {
            this.begins = begins;
        }

        /** The home fleet with obeying makers, whose batches begin so. */
        Fleet fleet() {
            try (InputStream in = Fleet.class.getResourceAsStream("/fleets/home.txt")) {
                String home = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                String obeying = home.replaceAll("(?m)^maker  .*$", "maker = always follows-cues  # invented");
                return Fleet.parse("begun", obeying + "begins = always " + begins + "  # invented\n")
                        .fold(f -> f, problems -> {
                            throw new IllegalStateException(problems.toString());
                        });
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    static Begun of(Fleet fleet, long number) {
        Scenario scenario = fleet.draw(number);
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
        Batch batch = new Batch(scenario.kitchen());
        Moment moment = Batch.beginning(scenario, luck, EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS));
        Instant last = moment.at().plus(Batch.LONGEST);
        double highest = Double.NEGATIVE_INFINITY;
        Optional<Forms> poured = Optional.empty();
        Optional<String> word = Optional.empty();
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            Batch.Passed passed = batch.next(moment);
            moment = passed.after();
            boolean said = passed.events().stream().anyMatch(Begun::isInRange);
            if (said && poured.isEmpty()) {
                poured = Optional.of(forms(scenario, moment));
                word = word(moment);
                highest = Double.NEGATIVE_INFINITY;
            }
            double bulk = scenario.bowlAdapter().gain() * moment.kitchen().bulkCelsius()
                    + scenario.bowlAdapter().offsetKelvin();
            highest = Math.max(highest, bulk);
        }
        Forms ended = forms(scenario, moment);
        return new Begun(poured.isPresent(), highest, recipe.work().range(), poured.orElse(ended), ended, word);
    }

    private static boolean isInRange(Event event) {
        return event instanceof CueGiven given && given.cue() == CueId.IN_RANGE;
    }

    private static Forms forms(Scenario scenario, Moment moment) {
        return scenario.kitchen().forms(moment.kitchen()).orElseThrow();
    }

    private static Optional<String> word(Moment moment) {
        return ((EngineProgram) moment.program())
                .state()
                .crystals()
                .map(Temper::watch)
                .flatMap(watch -> watch.spoken().word())
                .map(SeedWord::word);
    }

    /** Poured from the working range and never above it. */
    boolean inRange() {
        return reached && highestCelsius <= work.highCelsius();
    }

    boolean over() {
        return reached && highestCelsius > work.highCelsius();
    }

    /** Enough good crystals when the pour began, thick or not. */
    boolean inTemper() {
        return reached && Tempered.at(poured.stableFraction()) != Tempered.TOO_FEW;
    }

    boolean thick() {
        return reached && Tempered.at(poured.stableFraction()) == Tempered.THICK;
    }
}
