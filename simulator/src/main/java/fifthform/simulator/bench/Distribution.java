package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import fifthform.simulator.maker.Luck;
import java.util.List;
import java.util.Objects;

/** From what a number or a word of a kitchen is drawn. */
sealed interface Distribution {
    /** The value with this luck, as a scenario writes it, without its unit. */
    String draw(Luck luck);

    /** The values between which all draws lie, for trying whether a scenario takes them. */
    List<String> ends();

    /** One value or word, always. */
    record Always(String value) implements Distribution {
        public Always {
            Objects.requireNonNull(value, "value");
        }

        @Override
        public String draw(Luck luck) {
            return value;
        }

        @Override
        public List<String> ends() {
            return List.of(value);
        }
    }

    /**
     * One among some.
     *
     * @param words what can be drawn: words, or numbers with their units
     * @param weights how often, in proportion to each other
     */
    record OneOf(List<String> words, List<Double> weights) implements Distribution {
        public OneOf {
            words = List.copyOf(words);
            weights = List.copyOf(weights);
            if (words.isEmpty() || words.size() != weights.size()) {
                throw new IllegalArgumentException("words and weights must be as many, were " + words + ", " + weights);
            }
            weights.forEach(w -> Require.within(w, 0, 1e6, "weight"));
        }

        @Override
        public String draw(Luck luck) {
            double total = weights.stream().mapToDouble(Double::doubleValue).sum();
            double left = luck.uniform() * total;
            for (int i = 0; i < words.size(); i++) {
                left -= weights.get(i);
                if (left < 0) return words.get(i);
            }
            return words.get(words.size() - 1);
        }

        @Override
        public List<String> ends() {
            return words;
        }
    }

    /** Evenly between two numbers. */
    record Uniform(double low, double high) implements Distribution {
        public Uniform {
            Require.within(high, low, Double.MAX_VALUE, "high");
        }

        @Override
        public String draw(Luck luck) {
            return Numbers.plain(low + (high - low) * luck.uniform());
        }

        @Override
        public List<String> ends() {
            return List.of(Numbers.plain(low), Numbers.plain(high));
        }
    }

    /** Its logarithm lies evenly between those of two numbers above 0. */
    record LogUniform(double low, double high) implements Distribution {
        public LogUniform {
            Require.within(low, Double.MIN_NORMAL, high, "low");
            Require.within(high, low, Double.MAX_VALUE, "high");
        }

        @Override
        public String draw(Luck luck) {
            double drawn = low * StrictMath.exp(luck.uniform() * StrictMath.log(high / low));
            return Numbers.plain(Math.min(high, drawn));
        }

        @Override
        public List<String> ends() {
            return List.of(Numbers.plain(low), Numbers.plain(high));
        }
    }

    /** Normal; what is drawn outside the limits is drawn again. */
    record Normal(double mean, double deviation, double low, double high) implements Distribution {
        public Normal {
            Require.within(deviation, 0, Double.MAX_VALUE, "deviation");
            Require.within(mean, low, high, "mean");
        }

        @Override
        public String draw(Luck luck) {
            return Numbers.plain(Numbers.within(low, high, luck, l -> mean + deviation * l.normal()));
        }

        @Override
        public List<String> ends() {
            return List.of(Numbers.plain(low), Numbers.plain(high));
        }
    }

    /** Its logarithm is normal; what is drawn outside the limits is drawn again. */
    record LogNormal(double median, double spread, double low, double high) implements Distribution {
        public LogNormal {
            Require.within(spread, 0, 5, "spread");
            Require.within(median, low, high, "median");
        }

        @Override
        public String draw(Luck luck) {
            return Numbers.plain(Numbers.within(low, high, luck, l -> median * StrictMath.exp(spread * l.normal())));
        }

        @Override
        public List<String> ends() {
            return List.of(Numbers.plain(low), Numbers.plain(high));
        }
    }
}
