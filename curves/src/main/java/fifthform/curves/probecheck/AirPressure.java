package fifthform.curves.probecheck;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Require;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The pressure of the air where the water boils.
 *
 * @param kilopascals at the place itself, 45 to 115 kPa
 * @param sigmaKilopascals its standard uncertainty, kPa, 0 to 5
 */
public record AirPressure(double kilopascals, double sigmaKilopascals, Basis basis) {
    /** Where it is known from. */
    public enum Basis {
        /** A barometer at the place, or a report that says "station pressure". */
        STATION,
        /** A weather report, which gives the pressure reduced to sea level, and the altitude. */
        WEATHER_REPORT,
        /** The altitude alone: what the weather does to the pressure is unknown. */
        ALTITUDE;

        /** Whether it is the pressure of the day, so that a boiling point may correct a probe. */
        public boolean isOfTheDay() {
            return this != ALTITUDE;
        }
    }

    /** Real weather moves the pressure by about ±1 kPa (reference tables of this project); taken as rectangular. */
    private static final double WEATHER_SIGMA_KILOPASCALS = 1 / Math.sqrt(3);
    /** A barometer's or a report's own error and age, ±0.2 kPa rectangular; common practice, no source. */
    private static final double READING_SIGMA_KILOPASCALS = 0.2 / Math.sqrt(3);
    /** Air over the place differs from the standard atmosphere's; its mean temperature by about 10 K (assumed). */
    private static final double AIR_SIGMA_SHARE = 10 / 288.15;

    private static final double LOWEST_HECTOPASCALS = 500;
    private static final double HIGHEST_HECTOPASCALS = 1100;
    /** Weather at sea level has never been outside 870 to 1085 hPa (records, from memory). */
    private static final double LOWEST_SEA_LEVEL_HECTOPASCALS = 870;

    private static final double HIGHEST_SEA_LEVEL_HECTOPASCALS = 1085;
    /** Weather moves the pressure of a place by at most about this much from the usual (from the same records). */
    private static final double LARGEST_WEATHER_HECTOPASCALS = 80;
    /** Below this a pressure without an altitude is more likely millimetres of mercury than a mountain. */
    private static final double MOUNTAIN_HECTOPASCALS = 800;

    private static final String PRESSURE = "--pressure";
    private static final String SEA_LEVEL = "--sea-level-pressure";
    private static final String ALTITUDE = "--altitude";
    private static final String NOTHING_DONE = " Nothing was done.";

    public AirPressure {
        Require.within(kilopascals, 45, 115, "kilopascals");
        Require.within(sigmaKilopascals, 0, 5, "sigmaKilopascals");
        Objects.requireNonNull(basis, "basis");
    }

    /**
     * The pressure from what the maker knows of it.
     *
     * @param altitudeMetres of the kitchen above the sea
     * @param stationHectopascals pressure at the place itself
     * @param seaLevelHectopascals pressure as weather reports give it, reduced to sea level; needs the altitude
     * @return refused where it cannot be, with the unit that was probably meant
     */
    public static Parsed<AirPressure> from(
            OptionalDouble altitudeMetres, OptionalDouble stationHectopascals, OptionalDouble seaLevelHectopascals) {
        if (stationHectopascals.isPresent() && seaLevelHectopascals.isPresent())
            return refused(PRESSURE, "Both kinds of pressure are given." + NOTHING_DONE, "Give one of the two.");
        if (altitudeMetres.isPresent() && !isAltitude(altitudeMetres.getAsDouble()))
            return refused(
                    ALTITUDE,
                    "The altitude was " + plain(altitudeMetres.getAsDouble()) + " m, where nobody cooks."
                            + NOTHING_DONE,
                    "Give metres above the sea, from -430 to 5500; feet times 0.3048 are metres.");
        if (stationHectopascals.isPresent()) return station(altitudeMetres, stationHectopascals.getAsDouble());
        if (seaLevelHectopascals.isPresent()) return report(altitudeMetres, seaLevelHectopascals.getAsDouble());
        if (altitudeMetres.isPresent())
            return Parsed.accepted(new AirPressure(
                    StandardAir.kilopascals(altitudeMetres.getAsDouble()), WEATHER_SIGMA_KILOPASCALS, Basis.ALTITUDE));
        return refused(
                "--boil",
                "Where water boils depends on the pressure of the air, and nothing is known of it." + NOTHING_DONE,
                "Give --pressure HPA of a barometer, or --altitude M with --sea-level-pressure HPA of the weather report.");
    }

    private static Parsed<AirPressure> station(OptionalDouble altitudeMetres, double hectopascals) {
        if (!(hectopascals >= LOWEST_HECTOPASCALS && hectopascals <= HIGHEST_HECTOPASCALS))
            return refused(PRESSURE, no(hectopascals, "no pressure of air anywhere"), meant(hectopascals));
        if (altitudeMetres.isEmpty() && hectopascals < MOUNTAIN_HECTOPASCALS) {
            String there = Math.round(StandardAir.altitudeMetres(hectopascals / 10) / 10) * 10 + " m";
            return refused(
                    PRESSURE,
                    no(hectopascals, "the pressure at about " + there + " above the sea"),
                    meant(hectopascals) + " If you are that high, give --altitude too.");
        }
        if (altitudeMetres.isPresent()) {
            double usual = 10 * StandardAir.kilopascals(altitudeMetres.getAsDouble());
            if (Math.abs(hectopascals - usual) > LARGEST_WEATHER_HECTOPASCALS)
                return refused(
                        PRESSURE,
                        no(hectopascals, "not possible at that altitude, where " + Math.round(usual) + " hPa is usual"),
                        meant(hectopascals) + " A weather report's pressure goes with " + SEA_LEVEL + ".");
        }
        return Parsed.accepted(new AirPressure(hectopascals / 10, READING_SIGMA_KILOPASCALS, Basis.STATION));
    }

    /** Reduced by the standard atmosphere; what the air's real temperature makes of it goes into the uncertainty. */
    private static Parsed<AirPressure> report(OptionalDouble altitudeMetres, double hectopascals) {
        if (!(hectopascals >= LOWEST_SEA_LEVEL_HECTOPASCALS && hectopascals <= HIGHEST_SEA_LEVEL_HECTOPASCALS))
            return refused(
                    SEA_LEVEL,
                    no(hectopascals, "no pressure that weather has at sea level"),
                    meant(hectopascals) + " The pressure at your place itself goes with " + PRESSURE + ".");
        if (altitudeMetres.isEmpty())
            return refused(
                    SEA_LEVEL,
                    "A pressure at sea level says nothing without the altitude of the kitchen." + NOTHING_DONE,
                    "Give --altitude M too.");
        double share = StandardAir.shareOfSeaLevel(altitudeMetres.getAsDouble());
        double here = hectopascals / 10 * share;
        double byAir = Math.abs(hectopascals / 10 - here) * AIR_SIGMA_SHARE;
        double sigma = Math.sqrt(READING_SIGMA_KILOPASCALS * READING_SIGMA_KILOPASCALS + byAir * byAir);
        return Parsed.accepted(new AirPressure(here, sigma, Basis.WEATHER_REPORT));
    }

    /** The unit that was probably meant, and what it would be in hPa (1 mmHg = 1.33322 hPa, 1 inHg = 33.8639 hPa). */
    private static String meant(double value) {
        if (value >= 500 && value < MOUNTAIN_HECTOPASCALS) return unit("millimetres of mercury", value, 1.33322);
        if (value >= 15 && value <= 32.5) return unit("inches of mercury", value, 33.8639);
        if (value >= 50 && value <= 110) return unit("kilopascals", value, 10);
        if (value >= 0.5 && value <= 1.1) return unit("bar", value, 1000);
        if (value >= 50_000 && value <= 110_000) return unit("pascals", value, 0.01);
        return "Give hectopascals (the same as millibars), for example 1013.";
    }

    private static String unit(String name, double value, double hectopascals) {
        return "It looks like " + name + ": give " + Math.round(value * hectopascals) + " hPa.";
    }

    private static String no(double hectopascals, String why) {
        return plain(hectopascals) + " hPa is " + why + "." + NOTHING_DONE;
    }

    private static boolean isAltitude(double metres) {
        return metres >= StandardAir.LOWEST_METRES && metres <= StandardAir.HIGHEST_METRES;
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replace(".0", "");
    }

    private static Parsed<AirPressure> refused(String where, String what, String whatToDo) {
        return Parsed.refused(where, what, whatToDo);
    }
}
