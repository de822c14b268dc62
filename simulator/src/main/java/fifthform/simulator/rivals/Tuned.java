package fifthform.simulator.rivals;

import fifthform.curves.recipe.Recipe;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The rules of comparison with the numbers that their tuning found; {@code rivals/tuned.txt} keeps them, and
 * {@code RivalTuning} of the bench writes it.
 */
enum Tuned {
    /** Range of each number, and what is taken before anything is tuned. */
    THRESHOLD(List.of(range(-1.5, 0.5), range(0, 2.5))) {
        @Override
        Rule rule(double[] at) {
            return new ThresholdRule(at[1]);
        }
    },
    LINE(List.of(range(-1.5, 0.5), range(5, 60), range(4, 40))) {
        @Override
        Rule rule(double[] at) {
            return new LineRule(at[1], at[2]);
        }
    },
    EXPONENTIAL(List.of(range(-1.5, 0.5), range(5, 60), range(20, 120))) {
        @Override
        Rule rule(double[] at) {
            return new ExponentialRule(at[1], at[2]);
        }
    },
    KALMAN(List.of(range(-1.5, 0.5), range(10, 90), range(0.02, 1.2), range(0.002, 0.05))) {
        @Override
        Rule rule(double[] at) {
            return new KalmanRule(at[1], at[2], at[3]);
        }
    };

    private static final String TEXT = read();

    private final List<Range> ranges;

    Tuned(List<Range> ranges) {
        this.ranges = ranges;
    }

    /** Of one number. */
    record Range(double low, double high) {}

    private static Range range(double low, double high) {
        return new Range(low, high);
    }

    /** The first number is the aim above the middle of the range, K; the others are the rule's. */
    abstract Rule rule(double[] at);

    List<Range> ranges() {
        return ranges;
    }

    /** As a program for a batch in the cool range. */
    Rival rival(Recipe recipe, double[] at) {
        return new RuleAtWork(rule(at), recipe, at[0], RuleAtWork.Gate.MELTED);
    }

    /** As tuned. */
    Rival rival(Recipe recipe) {
        return rival(recipe, numbers());
    }

    /** The tuned numbers; the middle of each range before anything was tuned. */
    private double[] numbers() {
        for (String line : TEXT.lines().toList()) {
            String[] parts = line.split("#")[0].strip().split("\\s*=\\s*");
            if (parts.length == 2 && parts[0].equals(word())) {
                return Arrays.stream(parts[1].split("\\s+"))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
            }
        }
        return ranges.stream().mapToDouble(r -> (r.low() + r.high()) / 2).toArray();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static String read() {
        try (InputStream in = Tuned.class.getResourceAsStream("/rivals/tuned.txt")) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the tuned rules cannot be read", e);
        }
    }
}
