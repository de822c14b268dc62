package fifthform.curves.fault;

import java.util.Locale;

/** What may have spoiled bars. Names, remedies and sources stand in {@link FaultBook}. */
public enum Fault {
    COOLED_TOO_LITTLE,
    OVERSHOT,
    NOT_STIRRED,
    NOT_MELTED,
    OVER_TEMPERED,
    PROBE_WRONG,
    SEED_POOR,
    NOT_MIXED,
    WATER,
    SCORCHED,
    CORE_HEAT,
    SHOCK_COOLED,
    OUT_TOO_EARLY,
    MOULD_COLD,
    MOULD_DIRTY,
    CONDENSATION,
    STORED_WARM,
    OIL,
    AGED;

    /** The word in tables, files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
