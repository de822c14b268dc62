package fifthform.simulator.bench;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.simulator.bench.Distribution.Always;
import fifthform.simulator.bench.Distribution.LogNormal;
import fifthform.simulator.bench.Distribution.LogUniform;
import fifthform.simulator.bench.Distribution.Normal;
import fifthform.simulator.bench.Distribution.OneOf;
import fifthform.simulator.bench.Distribution.Uniform;
import fifthform.simulator.bench.DrawnLine.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a fleet: {@code key = distribution  # source}, one a line, where the key is any key of a scenario, and
 * {@code key if OTHER WORD = distribution} where it depends on a word drawn before. Finds all problems at once.
 */
final class FleetText {
    private static final String NUMBER = "(-?[0-9.]+)";
    private static final Pattern LINE =
            Pattern.compile("([a-z ]+?)(?: if ([a-z]+) ([a-z-]+))?\\s*=\\s*(.+?)\\s+#\\s*(.+)");
    private static final Pattern ALWAYS = Pattern.compile("always (.+)");
    private static final Pattern ONE_OF = Pattern.compile("one of (.+)");
    private static final Pattern WEIGHTED = Pattern.compile("([a-z-]+|-?[0-9.]+ \\S+) ([0-9.]+) ?%");
    private static final Pattern UNIFORM = Pattern.compile("uniform " + NUMBER + " to " + NUMBER + "(?: (\\S+))?");
    private static final Pattern LOG_UNIFORM =
            Pattern.compile("log-uniform " + NUMBER + " to " + NUMBER + "(?: (\\S+))?");
    private static final Pattern NORMAL = Pattern.compile(
            "normal " + NUMBER + " sd " + NUMBER + ", within " + NUMBER + " to " + NUMBER + "(?: (\\S+))?");
    private static final Pattern LOG_NORMAL = Pattern.compile(
            "log-normal " + NUMBER + " spread " + NUMBER + ", within " + NUMBER + " to " + NUMBER + "(?: (\\S+))?");
    private static final String FORMS =
            "Use: always X, one of a 60 %, b 40 %, uniform A to B unit, log-uniform A to B unit, normal M sd S,"
                    + " within A to B unit, or log-normal M spread S, within A to B unit.";

    private final List<Problem> problems = new ArrayList<>();
    private final List<DrawnLine> lines = new ArrayList<>();

    private FleetText() {}

    static Parsed<List<DrawnLine>> parse(String text) {
        FleetText reading = new FleetText();
        List<String> all = text.lines().toList();
        for (int i = 0; i < all.size(); i++) reading.line(i + 1, all.get(i).strip());
        if (!reading.problems.isEmpty()) return Parsed.refused(reading.problems);
        return Parsed.accepted(List.copyOf(reading.lines));
    }

    private void line(int number, String line) {
        if (line.isEmpty() || line.startsWith("#")) return;
        Matcher form = LINE.matcher(line);
        if (!form.matches()) {
            problem(
                    number,
                    "\"" + line + "\" is not a line of a fleet.",
                    "Write: key = distribution  # source or invented");
            return;
        }
        Optional<Condition> onlyIf =
                Optional.ofNullable(form.group(2)).map(other -> new Condition(other, form.group(3)));
        try {
            distribution(number, form.group(1).strip(), onlyIf, form.group(4), form.group(5));
        } catch (IllegalArgumentException impossible) {
            problem(
                    number,
                    "\"" + form.group(4) + "\" cannot be: " + impossible.getMessage() + ".",
                    "Change its numbers.");
        }
    }

    private void distribution(int number, String key, Optional<Condition> onlyIf, String text, String source) {
        Matcher always = ALWAYS.matcher(text);
        Matcher oneOf = ONE_OF.matcher(text);
        Matcher uniform = UNIFORM.matcher(text);
        Matcher logUniform = LOG_UNIFORM.matcher(text);
        Matcher normal = NORMAL.matcher(text);
        Matcher logNormal = LOG_NORMAL.matcher(text);
        if (always.matches()) {
            add(number, key, onlyIf, new Always(always.group(1)), Optional.empty(), source);
        } else if (oneOf.matches()) {
            add(number, key, onlyIf, weighted(oneOf.group(1)), Optional.empty(), source);
        } else if (uniform.matches()) {
            add(number, key, onlyIf, new Uniform(at(uniform, 1), at(uniform, 2)), unit(uniform, 3), source);
        } else if (logUniform.matches()) {
            Distribution drawn = new LogUniform(at(logUniform, 1), at(logUniform, 2));
            add(number, key, onlyIf, drawn, unit(logUniform, 3), source);
        } else if (normal.matches()) {
            Distribution drawn = new Normal(at(normal, 1), at(normal, 2), at(normal, 3), at(normal, 4));
            add(number, key, onlyIf, drawn, unit(normal, 5), source);
        } else if (logNormal.matches()) {
            Distribution drawn = new LogNormal(at(logNormal, 1), at(logNormal, 2), at(logNormal, 3), at(logNormal, 4));
            add(number, key, onlyIf, drawn, unit(logNormal, 5), source);
        } else {
            problem(number, "\"" + text + "\" is not a distribution.", FORMS);
        }
    }

    private void add(
            int number,
            String key,
            Optional<Condition> onlyIf,
            Distribution distribution,
            Optional<String> unit,
            String source) {
        lines.add(new DrawnLine(number, key, onlyIf, distribution, unit.orElse(""), source));
    }

    private static Distribution weighted(String text) {
        List<String> words = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (String each : text.split(",\\s*")) {
            Matcher one = WEIGHTED.matcher(each.strip());
            if (!one.matches())
                throw new IllegalArgumentException(
                        "\"" + each + "\" is not a word, or a number with its unit, and its percentage");
            words.add(one.group(1));
            weights.add(at(one, 2));
        }
        double total = weights.stream().mapToDouble(Double::doubleValue).sum();
        if (Math.abs(total - 100) > 0.01) throw new IllegalArgumentException("its shares make " + total + " %");
        return new OneOf(words, weights);
    }

    private static double at(Matcher form, int group) {
        return Double.parseDouble(form.group(group));
    }

    private static Optional<String> unit(Matcher form, int group) {
        return Optional.ofNullable(form.group(group));
    }

    private void problem(int number, String what, String whatToDo) {
        problems.add(new Problem("line " + number, what, whatToDo));
    }
}
