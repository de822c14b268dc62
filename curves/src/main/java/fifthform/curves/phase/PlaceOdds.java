package fifthform.curves.phase;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;

/**
 * How likely the bowl stands where, as some other witness of the curve has it: one more voice beside the rules.
 *
 * @param bath over warm or hot water, 0 to 1
 * @param table on the table, 0 to 1
 * @param coldWater in cold water, 0 to 1
 */
public record PlaceOdds(double bath, double table, double coldWater) {
    /** There is no such witness. */
    public static final PlaceOdds SILENT = new PlaceOdds(0, 0, 0);

    /** Surer than this a witness may move the bowl by itself. Tuned on the home fleet. */
    private static final double SURE = 0.6;

    /** Surer than this it may contradict a key that is half a minute old. Own choice. */
    private static final double SURER_THAN_A_KEY = 0.97;

    /** So sure of where the bowl stands it keeps the rules from moving it against a key. Own choice. */
    private static final double DOUBTS_A_MOVE = 0.75;

    /**
     * Where nobody said anything the rules move the bowl only if it holds at least so likely what they say: in a slow rise
     * every rest of the spoon looks like a lift to them. Tuned on the home fleet.
     */
    private static final double SECONDS_A_MOVE = 0.5;

    /** Surer than this it is taken for certain. Tuned on the home fleet. */
    private static final double ALL_BUT_CERTAIN = 0.97;

    public PlaceOdds {
        Require.within(bath, 0, 1, "bath");
        Require.within(table, 0, 1, "table");
        Require.within(coldWater, 0, 1, "coldWater");
    }

    /** From three logits. Source: softmax; the same bits on every machine. */
    public static PlaceOdds ofLogits(double bath, double table, double coldWater) {
        double most = Math.max(bath, Math.max(table, coldWater));
        double b = StrictMath.exp(bath - most);
        double t = StrictMath.exp(table - most);
        double c = StrictMath.exp(coldWater - most);
        double sum = b + t + c;
        return new PlaceOdds(b / sum, t / sum, c / sum);
    }

    double of(Place place) {
        return switch (place) {
            case BATH -> bath;
            case TABLE -> table;
            case COLD_WATER -> coldWater;
        };
    }

    /** Whether it is all but certain that the bowl stands over warm water. */
    public boolean isSurelyOverBath() {
        return bath > ALL_BUT_CERTAIN;
    }

    /** Whether the bowl more likely stands over warm water than not. */
    public boolean isLikelyOverBath() {
        return bath > 0.5;
    }

    /** Where the bowl is taken to stand, given what the rules make of its curve. */
    Place with(Contact contact, Place ruled) {
        if (bath + table + coldWater == 0) return ruled;
        boolean told = contact.evidence() == Evidence.TOLD;
        for (Place place : Place.values()) if (of(place) > (told ? SURER_THAN_A_KEY : SURE)) return place;
        boolean kept = told ? of(contact.place()) > DOUBTS_A_MOVE : of(ruled) < SECONDS_A_MOVE;
        return kept ? contact.place() : ruled;
    }
}
