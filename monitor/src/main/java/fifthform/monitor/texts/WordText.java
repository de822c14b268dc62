package fifthform.monitor.texts;

/** Single words: what the engine's constants are called on screens. {@link InWords} says which belongs to which. */
public enum WordText implements Text {
    // Phase.
    PHASE_MELT,
    PHASE_COOL,
    PHASE_SEED,
    PHASE_REWARM,
    PHASE_WORK,
    PHASE_REST,

    // SeedWord.
    CRYSTALS_ENOUGH,
    CRYSTALS_DOUBTFUL,
    CRYSTALS_TOO_FEW,
    /** {0} one of the three above. */
    CRYSTALS_AND_THICK,

    // BowlMaterial.
    MATERIAL_STEEL,
    MATERIAL_GLASS,
    MATERIAL_PLASTIC,
    MATERIAL_ALUMINIUM,
    MATERIAL_UNKNOWN,

    // OtherBowl.
    BOWL_HEAVIER,
    BOWL_LIGHTER,

    // Holding.Warmth.
    WARMED_BY_BATH,
    WARMED_BY_AIR,
    WARMED_BY_BOX,

    // Role.
    PROBE_OF_BOWL,
    PROBE_OF_BATH,
    PROBE_OF_ROOM,

    // Priority.
    PRIORITY_ADVISE,
    PRIORITY_PROMPT,
    PRIORITY_URGENT,

    // CueId.
    CUE_MELTED,
    CUE_MELT_FIRST,
    CUE_WARM_UP,
    CUE_SEED_NOW,
    CUE_SEED_OUT,
    CUE_STOP_COOLING,
    CUE_STIR_ON,
    CUE_CRYSTALS_ENOUGH,
    CUE_GET_READY,
    CUE_LIFT_NOW,
    CUE_OFF_NOW,
    CUE_WIPE_AND_STIR,
    CUE_PUT_BACK,
    CUE_WEAK_BATH,
    CUE_IN_RANGE,
    CUE_TOUCH_OF_WARMTH,
    CUE_TOUCH_OF_WARM_AIR,
    CUE_BOX_WARMER,
    CUE_BOX_COOLER,
    CUE_KEEP_FLUID,
    CUE_HOLD_OVER,
    CUE_THICKENS_SOON,

    // OtherFat.
    OTHER_FAT_LIKE_BUTTER,
    OTHER_FAT_SOFT,
    OTHER_FAT_LAURIC,

    // SampleProved.Verdict.
    SAMPLE_IN_TEMPER,
    SAMPLE_NOT_IN_TEMPER,
    SAMPLE_UNCLEAR,

    // TemperClass.
    TEMPER_NONE,
    TEMPER_UNDER,
    TEMPER_GOOD,
    TEMPER_OVER,
    TEMPER_UNCLEAR,

    // Smear.Look.
    FILM_GLOSSY,
    FILM_STREAKS,
    FILM_MATT,
    FILM_WET_MIDDLE,

    // Bloom, where there is room for a word only.
    BLOOM_NONE,
    BLOOM_VEIL,
    BLOOM_STREAKS,
    BLOOM_BLOTCHES,
    BLOOM_SUGAR,
    BLOOM_OILY,
    BLOOM_FUZZY
}
