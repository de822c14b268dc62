package fifthform.simulator.bench;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Many kitchens and makers, each drawn from stated distributions. The batch of a number depends on that number and the
 * fleet's text only, so batches may be run in any order and on any number of cores.
 */
public final class Fleet {
    /** The one that comes with the program. */
    public static final String HOME = "home";

    private static final String SEED = "seed";

    /** Luck for the kitchen and for the batch in it. */
    private static final int KITCHEN = 0;

    private static final int BATCH = 1;

    private final String id;
    private final long seed;
    private final List<DrawnLine> lines;

    private Fleet(String id, long seed, List<DrawnLine> lines) {
        this.id = id;
        this.seed = seed;
        this.lines = lines;
    }

    public String id() {
        return id;
    }

    /** Same seed, same batches. */
    public long seed() {
        return seed;
    }

    /** The same distributions with other luck. */
    public Fleet withSeed(long other) {
        return new Fleet(id, other, lines);
    }

    /**
     * The fleet in this text, or everything that is not acceptable about it. Both ends of every distribution are tried
     * on a scenario.
     */
    public static Parsed<Fleet> parse(String id, String text) {
        return FleetText.parse(text).fold(lines -> tried(new Fleet(id, seed(lines), lines)), Parsed::refused);
    }

    private static long seed(List<DrawnLine> lines) {
        return lines.stream()
                .filter(line -> line.key().equals(SEED))
                .mapToLong(line -> Long.parseLong(line.distribution().ends().get(0)))
                .findFirst()
                .orElse(1);
    }

    /** The fleet of this name that comes with the program. */
    public static Fleet builtIn(String id) {
        try (InputStream in = Fleet.class.getResourceAsStream("/fleets/" + id + ".txt")) {
            if (in == null) throw new IllegalArgumentException("there is no fleet " + id);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return parse(id, text).fold(fleet -> fleet, problems -> {
                throw new IllegalStateException("the program's own fleet is not acceptable: " + problems);
            });
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own fleet cannot be read", e);
        }
    }

    private static Parsed<Fleet> tried(Fleet fleet) {
        Map<String, DrawnLine> usual = fleet.drawnFrom(line -> new Luck(fleet.seed));
        for (DrawnLine line : fleet.lines) {
            Map<String, DrawnLine> counting = new LinkedHashMap<>(usual);
            counting.put(line.key(), line);
            for (String end : line.distribution().ends()) {
                List<String> text = new ArrayList<>();
                counting.forEach((key, each) -> text.add(each.written(
                        each == line ? end : each.distribution().ends().get(0))));
                List<Problem> problems =
                        ScenarioText.parse(fleet.id, String.join("\n", text)).fold(scenario -> List.of(), List::copyOf);
                if (!problems.isEmpty()) {
                    return Parsed.refused(located(problems.get(0), List.copyOf(counting.values()), line));
                }
            }
        }
        return Parsed.accepted(fleet);
    }

    /** A problem of the scenario's text as one of the fleet's; what is of no line is of the one being tried. */
    private static List<Problem> located(Problem problem, List<DrawnLine> counting, DrawnLine tried) {
        int number = IntStream.rangeClosed(1, counting.size())
                .filter(i -> problem.where().equals("line " + i))
                .map(i -> counting.get(i - 1).number())
                .findFirst()
                .orElse(tried.number());
        return List.of(new Problem("line " + number, problem.what(), problem.whatToDo()));
    }

    /** The text of the scenario with this number: kitchen, maker and habits, to be kept or gone through by itself. */
    public String text(long number) {
        Luck luck = kitchenLuck(number);
        return text(values(line -> luck));
    }

    /**
     * The text of another day in the kitchen with this number: what {@code kept} names is as it was then, all else is
     * drawn as for the number {@code day}.
     */
    public String text(long number, Set<String> kept, long day) {
        Luck then = kitchenLuck(number);
        Luck now = kitchenLuck(day);
        return text(values(line -> kept.contains(line.key()) ? then : now));
    }

    private static String text(Map<String, String> written) {
        return String.join("\n", written.values()) + "\n";
    }

    private Luck kitchenLuck(long number) {
        return new Luck(seed).branch(number).branch(KITCHEN);
    }

    /** The scenario with this number. */
    public Scenario draw(long number) {
        String name = id + "-" + number;
        return ScenarioText.parse(name, text(number)).fold(scenario -> scenario, problems -> {
            throw new IllegalStateException(name + " is not acceptable: " + problems);
        });
    }

    private Map<String, String> values(Function<DrawnLine, Luck> luck) {
        Map<String, String> written = new LinkedHashMap<>();
        drawnFrom(luck).forEach((key, line) -> written.put(key, line.written(value(line, luck.apply(line)))));
        return written;
    }

    /** The lines that count with this luck, by key. */
    private Map<String, DrawnLine> drawnFrom(Function<DrawnLine, Luck> luck) {
        Map<String, String> words = new LinkedHashMap<>();
        Map<String, DrawnLine> counting = new LinkedHashMap<>();
        for (DrawnLine line : lines) {
            boolean counts = line.onlyIf().map(c -> c.holds(words)).orElse(!words.containsKey(line.key()));
            if (!counts) continue;
            words.put(line.key(), value(line, luck.apply(line)));
            counting.put(line.key(), line);
        }
        return counting;
    }

    /** Each key's own luck, so that a line more in the text changes no other. */
    private static String value(DrawnLine line, Luck luck) {
        return line.distribution().draw(luck.branch(line.key().hashCode()));
    }

    /** Whose recipe a batch follows and what advises its maker. */
    public interface Advice {
        Recipe recipe(Scenario scenario);

        Program program(Scenario scenario, Recipe recipe);

        /** The engine, with the recipe that the scenario names. */
        static Advice engine(Function<String, Recipe> recipes) {
            return new Advice() {
                @Override
                public Recipe recipe(Scenario scenario) {
                    return recipes.apply(scenario.chocolate());
                }

                @Override
                public Program program(Scenario scenario, Recipe recipe) {
                    return EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS);
                }
            };
        }

        /** Nobody advises; the batch is judged by the recipe that the scenario names. */
        static Advice none(Function<String, Recipe> recipes) {
            return new Advice() {
                @Override
                public Recipe recipe(Scenario scenario) {
                    return recipes.apply(scenario.chocolate());
                }

                @Override
                public Program program(Scenario scenario, Recipe recipe) {
                    return Program.SILENT;
                }
            };
        }
    }

    /** The first moment of the batch with this number, for going through it step by step. */
    public Moment beginning(long number, Advice advice) {
        Scenario scenario = draw(number);
        Program program = advice.program(scenario, advice.recipe(scenario));
        return Batch.beginning(scenario, new Luck(seed).branch(number).branch(BATCH), program);
    }

    /** Goes through the batch with this number, readings without bytes. */
    public Ending run(long number, Advice advice) {
        Scenario scenario = draw(number);
        Recipe recipe = advice.recipe(scenario);
        Luck luck = new Luck(seed).branch(number).branch(BATCH);
        Moment first = Batch.beginning(scenario, luck, advice.program(scenario, recipe));
        return new Batch(scenario.kitchen()).run(first, recipe);
    }

    /** Goes through the first batches, one after the other. */
    public List<Ending> runFirst(long batches, Advice advice) {
        return LongStream.range(0, batches)
                .mapToObj(number -> run(number, advice))
                .toList();
    }
}
