package fifthform.monitor.learned;

import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Usual;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.LearnedText;
import fifthform.monitor.texts.UnitText;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/** The own bowls' times and coasts, how surely they are known, and how many batches stand behind each. */
public final class BowlFigures {
    /** Below this the scatter of the batches is itself unknown. Own choice. */
    private static final int LEAST_BATCHES = 3;

    private static final double NINE_IN_TEN = 0.95;
    private static final double NORMAL_NINE_IN_TEN = 1.645;
    private static final int PLACES = 2;

    private final Units units;

    public BowlFigures(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /**
     * A figure and where it lies 9 times in 10.
     *
     * @param factor from the figure to either end; empty where too few batches show it
     */
    private record Known(double figure, Optional<Double> factor, int batches) {
        /** Of logarithms; the band of their mean by Student's t. */
        static Optional<Known> ofLogarithms(Usual usual, int sign) {
            if (usual.batches() == 0) return Optional.empty();
            double figure = Math.exp(sign * usual.mean());
            if (usual.batches() < LEAST_BATCHES)
                return Optional.of(new Known(figure, Optional.empty(), usual.batches()));
            double deviation = Math.sqrt(usual.squares() / (usual.batches() - 1) / usual.batches());
            double t = new TDistribution(null, usual.batches() - 1).inverseCumulativeProbability(NINE_IN_TEN);
            return Optional.of(new Known(figure, Optional.of(Math.exp(t * deviation)), usual.batches()));
        }

        String words(String unit) {
            String band = factor.map(
                            f -> LearnedText.AT_9_TIMES_IN_10_TO.say(shown(figure / f), shown(figure * f), unit))
                    .orElse(LearnedText.FROM_TOO_FEW_BATCHES_TO_SAY.say());
            return shown(figure) + " " + unit + band + ", " + count(batches);
        }

        void into(JsonLine line, String key, String unit) {
            line.number(key + unit, figure, PLACES);
            factor.ifPresent(f -> line.number(key + "_lower" + unit, figure / f, PLACES)
                    .number(key + "_upper" + unit, figure * f, PLACES));
            line.whole(key + "_batches", batches);
        }

        private static String shown(double value) {
            return Units.format(value < 10 ? "%.1f" : "%.0f", value);
        }
    }

    /** A line for each amount of each bowl. */
    public List<String> lines(List<KeptBowl> bowls) {
        List<String> lines = new ArrayList<>();
        for (KeptBowl bowl : bowls) for (Taught taught : bowl.taught()) lines.add(line(bowl, taught));
        return lines;
    }

    private String line(KeptBowl bowl, Taught taught) {
        List<String> said = new ArrayList<>();
        said.add(taught.coast()
                .map(coast -> LearnedText.A_COAST_TIME_OF.say(TaughtWords.coast(coast, units), coast(coast)))
                .orElse(LearnedText.COAST_NOT_SEEN_YET.say()));
        Known.ofLogarithms(taught.answers().turn(), 1)
                .ifPresent(turn -> said.add(LearnedText.OUT_OF_THE_MELTING_BATH_IT.say(turn.words("s"))));
        pull(taught).ifPresent(pull -> said.add(LearnedText.COOLS_WITH_A_TIME_CONSTANT_OF.say(pull.words("min"))));
        return "  " + bowl.name() + ", " + TaughtWords.amount(taught) + ": " + String.join("; ", said) + "; "
                + TaughtWords.from(taught) + ".";
    }

    private static String coast(LearnedCoast coast) {
        double factor = Math.exp(NORMAL_NINE_IN_TEN * coast.logSpread());
        return LearnedText.S_TO_S.say(
                Units.format("%.0f", coast.coastSeconds()),
                Units.format("%.0f", coast.coastSeconds() / factor),
                Units.format("%.0f", coast.coastSeconds() * factor));
    }

    /** Its fall per kelvin above the water is the inverse of a time constant; measured water goes before usual water. */
    private static Optional<Known> pull(Taught taught) {
        return Known.ofLogarithms(taught.answers().pull(), -1)
                .or(() -> Known.ofLogarithms(taught.answers().pullGuessed(), -1));
    }

    /** For scripts, a line for each amount of each bowl. */
    public static List<String> json(List<KeptBowl> bowls) {
        List<String> lines = new ArrayList<>();
        for (KeptBowl bowl : bowls) for (Taught taught : bowl.taught()) lines.add(json(bowl, taught));
        return lines;
    }

    private static String json(KeptBowl bowl, Taught taught) {
        JsonLine line = new JsonLine().text("bowl", bowl.id()).number("amount_g", taught.amountGrams());
        taught.coast().ifPresent(coast -> {
            double factor = Math.exp(NORMAL_NINE_IN_TEN * coast.logSpread());
            line.number("coast_s", coast.coastSeconds(), PLACES)
                    .number("coast_lower_s", coast.coastSeconds() / factor, PLACES)
                    .number("coast_upper_s", coast.coastSeconds() * factor, PLACES)
                    .whole("lifts", coast.liftsSeen());
        });
        Known.ofLogarithms(taught.answers().turn(), 1).ifPresent(turn -> turn.into(line, "turn", "_s"));
        pull(taught).ifPresent(pull -> pull.into(line, "cooling", "_min"));
        return line.whole("batches", taught.batches()).end();
    }

    private static String count(int batches) {
        return UnitText.BATCHES.say(batches);
    }
}
