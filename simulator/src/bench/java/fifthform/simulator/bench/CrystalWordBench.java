package fifthform.simulator.bench;

import fifthform.curves.crystal.Temper;
import fifthform.curves.engine.State;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.simulator.alarms.AlarmRun;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Expected.Tempered;
import fifthform.simulator.scenario.Scenario;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.LongStream;

/**
 * The word about the crystals against the crystals there really were: {@code java … CrystalWordBench FLEET BATCHES SEED}.
 * Counted when the working range is first reached and at the end of the batch, over batches that came to it. Fats are
 * drawn with the model's own doubt, so the word is held against crystals that follow other constants than its own.
 */
public final class CrystalWordBench {
    private CrystalWordBench() {}

    public static void main(String[] arguments) {
        String name = arguments.length > 0 ? arguments[0] : Fleet.HOME;
        int batches = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 300;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 77;
        Fleet fleet = Fleet.builtIn(name).withSeed(seed);
        List<Seen> all = LongStream.range(0, batches)
                .parallel()
                .mapToObj(n -> Seen.of(fleet, n))
                .flatMap(Optional::stream)
                .toList();
        System.out.println(all.size() + " of " + batches + " batches came to the working range");
        print("when the range is reached", all, Seen::reached);
        print("at the end", all, Seen::ended);
    }

    private static void print(String when, List<Seen> all, Function<Seen, Pair> of) {
        Map<String, Map<Tempered, Integer>> counts = new TreeMap<>();
        for (Seen seen : all) {
            Pair pair = of.apply(seen);
            counts.computeIfAbsent(pair.word(), w -> new EnumMap<>(Tempered.class))
                    .merge(pair.truth(), 1, Integer::sum);
        }
        System.out.println(when + ": in truth too few, enough, thick");
        counts.forEach((word, truths) -> System.out.printf(
                Locale.ROOT,
                "  %-14s %4d %4d %4d%n",
                word,
                truths.getOrDefault(Tempered.TOO_FEW, 0),
                truths.getOrDefault(Tempered.ENOUGH, 0),
                truths.getOrDefault(Tempered.THICK, 0)));
        double[] seeds = all.stream()
                .mapToDouble(s -> 100 * of.apply(s).stableFraction())
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "  true seed, %% of the fat: one in ten below %.2f, middle %.2f, one in ten above %.2f%n",
                seeds[seeds.length / 10],
                seeds[seeds.length / 2],
                seeds[seeds.length - 1 - seeds.length / 10]);
    }

    private record Pair(String word, double stableFraction) {
        Tempered truth() {
            return Tempered.at(stableFraction);
        }

        static Pair of(State state, Forms forms) {
            String word = state.crystals()
                    .map(Temper::watch)
                    .map(watch -> watch.spoken())
                    .flatMap(spoken -> spoken.word().map(w -> w + (spoken.thick() ? " thick" : "")))
                    .orElse("-");
            return new Pair(word, forms.stableFraction());
        }
    }

    private record Seen(Pair reached, Pair ended) {
        static Optional<Seen> of(Fleet fleet, long number) {
            Scenario scenario = fleet.draw(number);
            Recipe recipe = recipe(scenario.chocolate());
            Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
            Moment moment =
                    Batch.beginning(scenario, luck, EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS));
            Batch batch = new Batch(scenario.kitchen());
            Instant last = moment.at().plus(Batch.LONGEST);
            Optional<Pair> reached = Optional.empty();
            Optional<Pair> latest = Optional.empty();
            while (!moment.maker().done() && moment.at().isBefore(last)) {
                moment = batch.next(moment).after();
                State state = ((EngineProgram) moment.program()).state();
                if (state.batch().phase() != Phase.WORK) continue;
                latest = Optional.of(Pair.of(
                        state, scenario.kitchen().forms(moment.kitchen()).orElseThrow()));
                if (reached.isEmpty()) reached = latest;
            }
            Optional<Pair> first = reached;
            return latest.map(end -> new Seen(first.orElseThrow(), end));
        }
    }

    private static Recipe recipe(String id) {
        try (InputStream in = AlarmRun.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            return RecipeText.parse(
                            id, new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .fold(recipe -> recipe, problems -> {
                        throw new IllegalStateException(problems.toString());
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
