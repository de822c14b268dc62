package fifthform.curves.plan;

/** What a plan says, in the order of the batch. */
public enum PlanKey {
    /** From lumps to the melting range. */
    MELT_TIME("melt-time", Unit.SECONDS),
    /** How long it stays there. */
    MELT_HOLD("melt-hold", Unit.SECONDS),
    /** Water for the cold bath. */
    COLD_WATER("cold-water", Unit.GRAMS),
    /** Ice in it, where the tap is too warm. */
    COLD_ICE("cold-ice", Unit.GRAMS),
    /** Water with which a forgotten bowl would stop in the cool range by itself. */
    COLD_STOPS_ITSELF("cold-water-that-stops-by-itself", Unit.GRAMS),
    /** Where a bowl that is forgotten in the cold bath ends. */
    COLD_FORGOTTEN("cold-forgotten-ends", Unit.CELSIUS),
    /** What the thermometer shows when the bowl is lifted out of the cold water. */
    COLD_LIFT("cold-lift-at", Unit.CELSIUS),
    /** How long until then. */
    COLD_TIME("cold-time", Unit.SECONDS),
    /** How far it still falls after that. */
    COLD_FALL("cold-falls-on", Unit.KELVIN),
    /** How long it is held in the cool range. */
    COOL_HOLD("cool-hold", Unit.SECONDS),
    /** Water for the warm bath. */
    WARM_WATER("warm-water", Unit.GRAMS),
    /** The warmest the bath may be for a bowl in the middle of the cool range. */
    WARM_BATH("warm-bath", Unit.CELSIUS),
    /** How far under the upper end of the range it is aimed. */
    WARM_MARGIN("warm-margin", Unit.KELVIN),
    /** The highest the chocolate comes in it. */
    WARM_PEAK("warm-peak", Unit.CELSIUS),
    /** Where it would end if nothing were lost to the room. */
    WARM_WITHOUT_LOSS("warm-without-loss-ends", Unit.CELSIUS),
    /** How long until it is most of the way up. */
    WARM_TIME("warm-time", Unit.SECONDS),
    /** Where boiling water then brings it, once it has stopped rising. */
    TOP_UP_PEAK("top-up-peak", Unit.CELSIUS),
    /** Boiling water for a bowl that stands still a kelvin under that. */
    TOP_UP_WATER("top-up-water", Unit.GRAMS),
    /** How long that takes. */
    TOP_UP_TIME("top-up-time", Unit.SECONDS),
    /** The hotter bath of the quick way. */
    QUICK_BATH("quick-bath", Unit.CELSIUS),
    /** What the thermometer shows when the bowl is lifted out of it. */
    QUICK_LIFT("quick-lift-at", Unit.CELSIUS),
    /** How long until then. */
    QUICK_TIME("quick-time", Unit.SECONDS),
    /** The latest that it may be lifted, for the quickest of bowls. */
    QUICK_LATEST("quick-latest", Unit.SECONDS),
    /** How far it still rises after that. */
    QUICK_COAST("quick-coasts-on", Unit.KELVIN),
    /** The most water of that bath that cannot pass the range even if the bowl is forgotten. */
    QUICK_MOST_WATER("quick-most-water", Unit.GRAMS),
    /** Seed, added at melt-out. */
    SEED("seed", Unit.GRAMS),
    /** When it is added. */
    SEED_AT("seed-at", Unit.CELSIUS),
    /** Of that seed, what is still solid in the working range. */
    SEED_STILL_SOLID("seed-still-solid", Unit.GRAMS),
    /** The warmest melt of which a quarter of seed leaves enough solid. */
    QUARTER_AT("quarter-at-most-at", Unit.CELSIUS),
    /** What of a quarter is still solid where it is added into the melting range. */
    QUARTER_STILL_SOLID("quarter-still-solid", Unit.PERCENT),
    /** When pieces that are left are taken out. */
    SEED_OUT("seed-out-at", Unit.CELSIUS),
    /** Chocolate for the slab. */
    SLAB("slab", Unit.GRAMS),
    /** How cool it is when it goes back. */
    SLAB_AT("slab-back-at", Unit.CELSIUS),
    /** How warm the rest is by then. */
    SLAB_REST("slab-rest-at", Unit.CELSIUS),
    /** Warm chocolate that a holding bowl takes before it passes the range. */
    HOLD_ADD("hold-add", Unit.GRAMS),
    /** Until a bowl on the table leaves the range below. */
    HOLD_TIME("hold-time", Unit.SECONDS),
    /** Until it is too thick to pour. */
    WORKING_TIME("working-time", Unit.SECONDS),
    /** How warm the moulds are. */
    MOULD("mould", Unit.CELSIUS),
    /** How many bars there will be. */
    BARS("bars", Unit.COUNT),
    /** What a bar's surface must be warmer than when it comes out of the cool. */
    DEW_POINT("dew-point", Unit.CELSIUS);

    /** What a figure is measured in. */
    public enum Unit {
        CELSIUS("c"),
        KELVIN("k"),
        GRAMS("g"),
        SECONDS("s"),
        PERCENT("percent"),
        COUNT("count");

        private final String word;

        Unit(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }

    private final String word;
    private final Unit unit;

    PlanKey(String word, Unit unit) {
        this.word = word;
        this.unit = unit;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    public Unit unit() {
        return unit;
    }
}
