package fifthform.curves.proof;

import java.util.Locale;

/** Why a curve is not judged, with what to do. */
public enum Unfit {
    TIMES_GO_BACK("The times of the readings stand still or go back. Record again, or mend the table's time column."),
    TOO_FEW("There are too few readings: one in 10 s is the least. Let the adapter send more often, and repeat."),
    COARSE("The numbers are too coarse: steps of 0.5 °C at most. Let the adapter send decimals, and repeat."),
    NOT_IN_ICE(
            "The sample never fell by 2 °C a minute. Hang the cup in crushed ice and water, up to the chocolate's level, and repeat."),
    START_COLD(
            "The sample was too cold when it went into the ice: crystals had grown on the way. Take it from the stirred bowl and dip it within 20 s."),
    START_HOT(
            "The sample was too warm when it went into the ice: its crystals were melting. Take it from the bowl at working temperature."),
    WARM_BATH("The bath was too warm. Use crushed ice with just enough water to fill the gaps, stir, and repeat."),
    ICE_GONE("The ice was gone before the end, so the bath was warming. Take more ice, and repeat."),
    GAP("Readings are missing in the middle. Look at plug and lead, and repeat."),
    STIRRED("The readings waver: the sample was stirred or shaken. Leave it alone until it is cold, and repeat."),
    MOVED(
            "The reading jumped: the tip slipped or was pulled. Hold it with a skewer across the rim, half deep on the axis, and repeat."),
    AT_WALL(
            "It fell faster than this cup can: the tip leaned on the wall, or the cup was not full. Hang the tip on the axis, weigh the sample, and repeat."),
    TOO_SLOW(
            "It fell more slowly than this cup does: too much chocolate, or too little ice around it. Weigh the sample, stir the ice, and repeat."),
    TOO_SHORT("It ended too early. Leave the sample in the ice until it is below 8 °C, about 8 to 15 minutes.");

    private final String words;

    Unfit(String words) {
        this.words = words;
    }

    /** For people: what happened and what to do. */
    public String words() {
        return words;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
