package fifthform.simulator.scenario;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.What;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads a scenario: {@code key = value unit  # why}, one a line. Finds all problems at once, each with its line.
 */
public final class ScenarioText {
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    private final Map<Wording, String> words = new EnumMap<>(Wording.class);
    private final Map<Wording, Integer> wordLines = new EnumMap<>(Wording.class);
    private final List<FaultText> faults = new ArrayList<>();
    private final List<Interruption> interruptions = new ArrayList<>();

    private ScenarioText() {}

    /**
     * The scenario in this text, or everything that is not acceptable about it.
     *
     * @param id its name
     */
    public static Parsed<Scenario> parse(String id, String text) {
        ScenarioText reading = new ScenarioText();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) reading.line(i + 1, lines.get(i));
        reading.requireWords(lines.size());
        if (!reading.problems.isEmpty()) return Parsed.refused(reading.problems);
        return new ScenarioBuild(
                        reading.figures, reading.words, reading.wordLines, reading.faults, reading.interruptions)
                .build(id);
    }

    private void line(int number, String whole) {
        String line = whole.replaceFirst("(^|\\s)#.*$", "").strip();
        if (line.isEmpty()) return;
        int equals = line.indexOf('=');
        if (equals < 0) {
            problem(number, "There is no = in \"" + line + "\".", "Write: key = value unit  # why");
            return;
        }
        String key = line.substring(0, equals).strip().toLowerCase(Locale.ROOT);
        String value = line.substring(equals + 1).strip();
        Optional<Figure> figure = Figure.fromWord(key);
        Optional<Wording> wording = Wording.fromWord(key);
        if (figure.isPresent()) figure(number, figure.get(), value);
        else if (wording.isPresent()) word(number, wording.get(), value);
        else problem(number, "\"" + key + "\" is not a key of a scenario.", nearest(key));
    }

    private void figure(int number, Figure figure, String value) {
        String[] parts = value.split("\\s+", 2);
        String unit = parts.length > 1 ? parts[1] : "";
        if (!unit.equals(figure.unit())) {
            String wanted = figure.unit().isEmpty() ? "no unit" : "the unit " + figure.unit();
            problem(
                    number,
                    "\"" + figure.word() + "\" takes " + wanted + ", found \"" + unit + "\".",
                    "Change the unit.");
            return;
        }
        double read = NumberText.number(parts[0]);
        if (!(read >= figure.low() && read <= figure.high())) {
            String range = plain(figure.low()) + " to " + plain(figure.high());
            problem(
                    number,
                    "\"" + figure.word() + "\" must be " + range + ", found \"" + parts[0] + "\".",
                    "Give a number within that range.");
        } else if (figures.putIfAbsent(figure, read) != null) {
            twice(number, figure.word());
        }
    }

    private void word(int number, Wording wording, String value) {
        if (wording == Wording.FAULT) {
            FaultText.parse(number, value).fold(faults::add, problems::addAll);
        } else if (wording == Wording.INTERRUPTED) {
            InterruptionText.parse(number, value, What.MISHAPS).fold(interruptions::add, problems::addAll);
        } else if (wording == Wording.ACT) {
            InterruptionText.parse(number, value, What.DEEDS).fold(interruptions::add, problems::addAll);
        } else if (value.isEmpty()) {
            problem(number, "\"" + wording.word() + "\" says nothing.", "Write something after the =.");
        } else if (words.putIfAbsent(wording, value) != null) {
            twice(number, wording.word());
        } else {
            wordLines.put(wording, number);
        }
    }

    private void requireWords(int lastLine) {
        for (Wording wording : Wording.values()) {
            if (!wording.required() || words.containsKey(wording)) continue;
            boolean tried = problems.stream().anyMatch(p -> p.what().startsWith("\"" + wording.word() + "\""));
            if (!tried) {
                problem(Math.max(1, lastLine), "\"" + wording.word() + "\" is missing.", "Add a line for it.");
            }
        }
    }

    private void twice(int number, String word) {
        problem(number, "\"" + word + "\" stands here for the second time.", "Keep one of the two lines.");
    }

    private void problem(int number, String what, String whatToDo) {
        problems.add(new Problem("line " + number, what, whatToDo));
    }

    private static String nearest(String key) {
        Stream<String> known = Stream.concat(
                Stream.of(Figure.values()).map(Figure::word),
                Stream.of(Wording.values()).map(Wording::word));
        return Nearest.to(key, known.toList())
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("The keys are those of the built-in scenarios.");
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
