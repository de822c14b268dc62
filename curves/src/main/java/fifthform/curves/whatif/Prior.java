package fifthform.curves.whatif;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Setup;
import fifthform.curves.whatif.Bodies.Parameter;

/**
 * What is known of a kitchen before its readings are looked at: a middle and a standard deviation for each parameter.
 * Wide; they keep the fit where kitchens are where the readings say little. Orders of magnitude from film coefficients of
 * handbooks (10 W/m²K to air, 100 to 200 to stirred chocolate, 150 to 500 to water; from memory) for the wetted wall of a
 * bowl with 0.6 kg.
 *
 * @param middle the middles
 * @param spread the standard deviations
 */
record Prior(double[] middle, double[] spread) {
    private static final double USUAL_GRAMS = 600;
    private static final double USUAL_ROOM_CELSIUS = 21;

    /** A probe in the water and one in the bowl disagree, and water is not the same everywhere, K. */
    private static final double MEASURED_BATH_SPREAD = 0.8;

    private static final double SAID_BATH_SPREAD = 3;

    /** From the curve alone a lift is noticed some seconds late, and by as many more or less, s. */
    private static final double LIFT_LATE_SECONDS = 8;

    private static final double LIFT_SPREAD_SECONDS = 10;

    /** An entry even later, as the wall must be warm first; over weak water by a minute and more, s. */
    private static final double ENTRY_LATE_SECONDS = 20;

    private static final double ENTRY_SPREAD_SECONDS = 30;

    /** A key comes with the hands, or a moment after. */
    private static final double KEY_SPREAD_SECONDS = 0.7;

    /** Where the curve seemed to show it earlier than the key told, by this share of the time between. */
    private static final double UNSURE = 0.15;

    static double roomCelsius(Setup setup) {
        return setup.roomCelsius().orElse(USUAL_ROOM_CELSIUS);
    }

    static Prior of(Setup setup, Window window, Stay stay, Stay after) {
        double kilos = setup.bowl().amountGrams().orElse(USUAL_GRAMS) / USUAL_GRAMS;
        // Wall for each mass of chocolate.
        double size = 1 / StrictMath.cbrt(kilos);
        double[] middle = new double[Parameter.COUNT];
        double[] spread = new double[Parameter.COUNT];
        Setting set = (which, value, sd) -> {
            middle[which.ordinal()] = value;
            spread[which.ordinal()] = sd;
        };
        set.to(Parameter.WALL_TO_CHOCOLATE, StrictMath.log(0.006 * size), 0.7);
        set.to(Parameter.WALL_SHARE, StrictMath.log(share(setup.bowl().material()) * size), 0.5);
        set.to(Parameter.WATER_TO_WALL, StrictMath.log(0.01 * size), 0.9);
        set.to(Parameter.LOSS_AFTER, StrictMath.log(8e-4 * size), 0.7);
        set.to(Parameter.LOSS_BEFORE, StrictMath.log(7e-4 * size), 0.7);
        water(set, setup, window, stay, after);
        set.to(Parameter.TIP_LAG, StrictMath.log(Math.max(0.5, setup.bowlProbe().lagSeconds())), 0.5);
        set.to(Parameter.CHOCOLATE, window.tip()[0], 1);
        boolean inWater = window.course().entrySeconds() <= 0;
        set.to(Parameter.WALL_ABOVE, inWater ? toWater(stay.place()) : 0, inWater ? 4 : 1);
        set.to(Parameter.WATER_COOLS, StrictMath.log(0.1 * kilos), 0.7);
        set.to(Parameter.WATER_LOSES, StrictMath.log(2e-4), 0.7);
        set.to(Parameter.SLOW_SHARE, StrictMath.log(0.25), 0.7);
        set.to(Parameter.SLOW_SECONDS, StrictMath.log(120), 0.5);
        set.to(Parameter.FILM, StrictMath.log(0.04 * size), 0.6);
        moment(set, Parameter.ENTRY_LATER, stay, ENTRY_LATE_SECONDS, ENTRY_SPREAD_SECONDS);
        moment(set, Parameter.LIFT_LATER, after, LIFT_LATE_SECONDS, LIFT_SPREAD_SECONDS);
        return new Prior(middle, spread);
    }

    private interface Setting {
        void to(Parameter which, double value, double sd);
    }

    private static double share(BowlMaterial material) {
        return switch (material) {
            case STEEL, ALUMINIUM -> 0.22;
            case GLASS -> 0.4;
            case PLASTIC -> 0.3;
            case UNKNOWN -> 0.27;
        };
    }

    private static void water(Setting set, Setup setup, Window window, Stay stay, Stay after) {
        if (stay.place() == Place.COLD_WATER) {
            set.to(Parameter.WATER, 16, 4);
        } else if (!Double.isNaN(window.bathCelsius())) {
            set.to(Parameter.WATER, window.bathCelsius(), MEASURED_BATH_SPREAD);
        } else if (after.came().phase() == Phase.MELT) {
            set.to(Parameter.WATER, 60, 10);
        } else if (setup.bathCelsius().isPresent()) {
            set.to(Parameter.WATER, setup.bathCelsius().getAsDouble(), SAID_BATH_SPREAD);
        } else {
            double usual = setup.recipe().work().range().highCelsius() + 13;
            set.to(Parameter.WATER, usual, 6);
        }
    }

    /** In the water the wall is nearer to it than the chocolate is, K. */
    private static double toWater(Place place) {
        return place == Place.BATH ? 4 : -4;
    }

    private static void moment(Setting set, Parameter which, Stay came, double late, double spread) {
        boolean told = came.came().evidence() == Evidence.TOLD;
        double keySpread = KEY_SPREAD_SECONDS + UNSURE * came.unsureSeconds();
        set.to(which, told ? 0 : -late, told ? keySpread : spread);
    }
}
