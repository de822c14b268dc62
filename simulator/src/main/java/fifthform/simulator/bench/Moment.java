package fifthform.simulator.bench;

import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.maker.Maker;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Everything about a batch at one moment: a value, so that it can be kept, compared and gone on from in several ways.
 *
 * @param at the time
 * @param steps how many steps led here
 * @param kitchen all temperatures
 * @param hands what was done up to here
 * @param maker who does it
 * @param program what advises
 * @param shownCelsius the last number on the thermometer
 * @param bowl the thermometer in the chocolate
 * @param bath the thermometer in the bath
 */
public record Moment(
        Instant at,
        long steps,
        KitchenState kitchen,
        Hands hands,
        Maker maker,
        Program program,
        OptionalDouble shownCelsius,
        Gauge bowl,
        Gauge bath) {
    public Moment {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(hands, "hands");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(shownCelsius, "shownCelsius");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(bath, "bath");
    }

    /** The same moment with another program from here on. */
    public Moment advisedBy(Program other) {
        return new Moment(at, steps, kitchen, hands, maker, other, shownCelsius, bowl, bath);
    }

    /** The same moment in somebody else's hands from here on. */
    public Moment inHandsOf(Maker other) {
        return new Moment(at, steps, kitchen, hands, other, program, shownCelsius, bowl, bath);
    }
}
