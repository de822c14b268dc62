package fifthform.simulator.training;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Given;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.WallMaterial;
import fifthform.simulator.maker.Dice;
import fifthform.simulator.maker.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the maker of one session says and what is measured beside the readings, drawn once: sometimes everything, often
 * nothing, so that one network serves with and without. All shares and errors are invented.
 *
 * @param lowCelsius low end of the working range
 * @param presses whether the bowl's moves are told, and how late
 * @param bath whether the rewarm's water is known, and from what
 * @param bathErrorKelvin by how much that is wrong
 * @param amountGrams as told
 * @param material as told
 * @param learned as the program knows it from earlier batches
 * @param roomCelsius as told
 * @param lagSeconds as measured
 */
record Told(
        double lowCelsius,
        Presses presses,
        Bath bath,
        double bathErrorKelvin,
        OptionalDouble amountGrams,
        BowlMaterial material,
        Optional<LearnedCoast> learned,
        OptionalDouble roomCelsius,
        OptionalDouble lagSeconds) {
    private static final double PRESSING_SHARE = 0.5;
    private static final double EXACT_SHARE = 0.2;
    private static final double FORGOTTEN_SHARE = 1 / 7.0;
    private static final double LATEST_SECONDS = 4;
    private static final double BATH_SHARE = 0.4;
    private static final double TYPED_ERROR_KELVIN = 1.5;
    private static final double PROBE_ERROR_KELVIN = 0.15;
    private static final double AMOUNT_SHARE = 0.5;
    private static final double AMOUNT_ERROR = 0.05;
    private static final double MATERIAL_SHARE = 0.5;
    private static final double ROOM_SHARE = 0.3;
    private static final double ROOM_ERROR_KELVIN = 1;
    private static final double LAG_SHARE = 0.3;
    private static final double LAG_ERROR = 0.1;

    /** How the bowl's moves are told. */
    enum Presses {
        NEVER,
        LATE,
        EXACT
    }

    /** From what the bath is known. */
    enum Bath {
        UNKNOWN,
        TYPED,
        PROBE
    }

    /** A press that is still to come. */
    record Press(double atSeconds, Place place) {}

    static Told draw(Kitchen kitchen, double lowCelsius, Optional<LearnedCoast> learned, Luck luck) {
        Dice dice = new Dice(luck);
        Presses presses = Presses.NEVER;
        boolean pressing = dice.happens(PRESSING_SHARE);
        boolean exact = dice.happens(EXACT_SHARE);
        if (pressing) presses = exact ? Presses.EXACT : Presses.LATE;
        Bath bath = Bath.UNKNOWN;
        boolean knowing = dice.happens(BATH_SHARE);
        boolean typed = dice.happens(0.5);
        if (knowing) bath = typed ? Bath.TYPED : Bath.PROBE;
        double bathError = dice.normal() * (typed ? TYPED_ERROR_KELVIN : PROBE_ERROR_KELVIN);
        double grams = 1000 * kitchen.chocolate().kilograms() * StrictMath.exp(AMOUNT_ERROR * dice.normal());
        double room = kitchen.roomCelsius() + ROOM_ERROR_KELVIN * dice.normal();
        double lag = kitchen.tip().lagSeconds() * StrictMath.exp(LAG_ERROR * dice.normal());
        return new Told(
                lowCelsius,
                presses,
                bath,
                bathError,
                some(dice.happens(AMOUNT_SHARE), grams),
                dice.happens(MATERIAL_SHARE) ? material(kitchen.bowl().material()) : BowlMaterial.UNKNOWN,
                learned,
                some(dice.happens(ROOM_SHARE), room),
                some(dice.happens(LAG_SHARE), lag));
    }

    private static OptionalDouble some(boolean told, double value) {
        return told ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static BowlMaterial material(WallMaterial material) {
        return switch (material) {
            case STEEL -> BowlMaterial.STEEL;
            case GLASS -> BowlMaterial.GLASS;
            case PLASTIC -> BowlMaterial.PLASTIC;
            case ALUMINIUM -> BowlMaterial.ALUMINIUM;
        };
    }

    /**
     * What is known now. A number typed in is the one planned for the rewarm, and counts once the chocolate has been
     * cooled; a probe in the bath is read all the time.
     *
     * @param plannedCelsius the rewarm's water as it was when the melt was over; empty before
     */
    Given given(KitchenState now, OptionalDouble plannedCelsius) {
        return new Given(
                lowCelsius, bathCelsius(now, plannedCelsius), amountGrams, material, learned, roomCelsius, lagSeconds);
    }

    private OptionalDouble bathCelsius(KitchenState now, OptionalDouble plannedCelsius) {
        return switch (bath) {
            case UNKNOWN -> OptionalDouble.empty();
            case TYPED ->
                plannedCelsius.isPresent()
                        ? OptionalDouble.of(plannedCelsius.getAsDouble() + bathErrorKelvin)
                        : OptionalDouble.empty();
            case PROBE -> OptionalDouble.of(now.bathTipCelsius() + bathErrorKelvin);
        };
    }

    /** The key for a move at this time; empty where it is forgotten or nobody presses. */
    Optional<Press> press(double seconds, Place place, Dice dice) {
        boolean forgotten = dice.happens(FORGOTTEN_SHARE);
        double late = dice.between(0, LATEST_SECONDS);
        return switch (presses) {
            case NEVER -> Optional.empty();
            case EXACT -> Optional.of(new Press(seconds, place));
            case LATE -> forgotten ? Optional.empty() : Optional.of(new Press(seconds + late, place));
        };
    }

    /** Those of these presses that come before this time, taken out of the list; in their order. */
    static List<Press> due(List<Press> waiting, double beforeSeconds) {
        List<Press> now = new ArrayList<>(1);
        waiting.removeIf(press -> press.atSeconds() < beforeSeconds && now.add(press));
        return now;
    }
}
