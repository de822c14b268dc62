package fifthform.simulator.rivals;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.maker.Luck;
import java.util.Objects;
import java.util.Optional;

/**
 * A rival whose readings are spoilt on their way.
 *
 * @param rival who hears them
 * @param how what is done to them
 * @param count readings of the bowl up to now
 * @param luck for what comes by chance
 */
record Spoilt(Rival rival, How how, long count, Luck luck) implements Rival {
    /** What is done to the readings. */
    enum How {
        /** A device that shows quarters of a kelvin. */
        QUARTER_STEPS,
        /** One in five never arrives. */
        ONE_IN_FIVE_LOST,
        /** One a minute is far off. */
        SPIKE_A_MINUTE,
        /** A device that shows whole and half degrees Fahrenheit. */
        FAHRENHEIT
    }

    private static final double LOST_FRACTION = 0.2;
    private static final double STEP_KELVIN = 0.25;
    private static final double FAHRENHEIT_STEP = 0.5;
    private static final int READINGS_A_MINUTE = 120;

    Spoilt {
        Objects.requireNonNull(rival, "rival");
        Objects.requireNonNull(how, "how");
        Objects.requireNonNull(luck, "luck");
    }

    @Override
    public Heard hear(Input input) {
        if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) {
            return heard(rival.hear(input), count, luck);
        }
        if (how == How.ONE_IN_FIVE_LOST && luck.uniform() < LOST_FRACTION) {
            return Rival.silent(new Spoilt(rival, how, count + 1, luck.after()));
        }
        return heard(rival.hear(spoilt(sample)), count + 1, luck.after());
    }

    private Heard heard(Heard by, long newCount, Luck newLuck) {
        return new Heard(new Spoilt((Rival) by.after(), how, newCount, newLuck), by.events());
    }

    private Sample spoilt(Sample sample) {
        double celsius = sample.tipCelsius();
        return switch (how) {
            case ONE_IN_FIVE_LOST -> sample;
            case QUARTER_STEPS -> with(sample, STEP_KELVIN * Math.round(celsius / STEP_KELVIN), STEP_KELVIN);
            case FAHRENHEIT -> {
                double shown = FAHRENHEIT_STEP * Math.round((celsius * 1.8 + 32) / FAHRENHEIT_STEP);
                yield with(sample, (shown - 32) / 1.8, FAHRENHEIT_STEP / 1.8);
            }
            case SPIKE_A_MINUTE -> {
                if (count % READINGS_A_MINUTE != READINGS_A_MINUTE - 1) yield sample;
                double off = 5 + 20 * luck.uniform();
                yield with(sample, celsius + (luck.after().uniform() < 0.5 ? -off : off), 0);
            }
        };
    }

    private static Sample with(Sample sample, double celsius, double stepKelvin) {
        double sigma = Math.max(sample.sigmaKelvin(), stepKelvin / Math.sqrt(12));
        return new Sample(
                sample.at(), sample.probe(), celsius, sigma, sample.junctionCelsius(), sample.emfMillivolts());
    }

    @Override
    public Optional<Said> said() {
        return rival.said();
    }

    @Override
    public Optional<Place> place() {
        return rival.place();
    }

    @Override
    public Optional<Phase> phase() {
        return rival.phase();
    }
}
