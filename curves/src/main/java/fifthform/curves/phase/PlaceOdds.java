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

    /** Surer than this a witness may move the bowl by itself. Own choice. */
    private static final double SURE = 0.9;

    /** Surer than this it may contradict a key that is half a minute old. Own choice. */
    private static final double SURER_THAN_A_KEY = 0.97;

    /** So sure of where the bowl stands it keeps the rules from moving it. Own choice. */
    private static final double DOUBTS_A_MOVE = 0.75;

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
        return bath > SURE;
    }

    /** Where the bowl is taken to stand, given what the rules make of its curve. */
    Place with(Contact contact, Place ruled) {
        double sure = contact.evidence() == Evidence.TOLD ? SURER_THAN_A_KEY : SURE;
        for (Place place : Place.values()) if (of(place) > sure) return place;
        boolean kept = ruled != contact.place() && of(contact.place()) > DOUBTS_A_MOVE;
        return kept ? contact.place() : ruled;
    }
}
