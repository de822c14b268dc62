package fifthform.monitor.texts;

/** What is said of batches that begin otherwise, and of planned holds. */
public enum HoldText implements Text {
    NOT_SAVED,
    /** {0} the session, {1} the cause. */
    AGAIN_FIRST_THEN,
    NOTHING_FOUND,
    /** {0} what to do. */
    THIS_TIME,
    LOOK_AT_THE_REST,
    INSTEAD_MELTED_TOO_COOL,
    INSTEAD_MELTED_TOO_HOT,
    INSTEAD_COOLED_TOO_LITTLE,
    INSTEAD_HELD_TOO_SHORT,
    INSTEAD_COOLED_TOO_DEEP,
    INSTEAD_COOLED_TOO_LONG,
    INSTEAD_NOT_STIRRED,
    INSTEAD_BATH_TOO_HOT,
    INSTEAD_LIFTED_LATE,
    INSTEAD_OVERSHOT,
    INSTEAD_WORKED_TOO_COOL,
    INSTEAD_PROBE_OUT,
    INSTEAD_PROBE_FAULTY,
    /** {0} the warning, {1} the melt-out. */
    WARM_IT_GENTLY,
    CAUTION_BATH,
    CAUTION_AIR,
    CAUTION_BOX,
    KIND_IN_TEMPER,
    /** {0} the session. */
    KIND_AGAIN,
    /** {0} the session. */
    LINK_FROM,
    /** {0} the sessions. */
    LINK_IN,
    /** {0} so far, {1} planned, {2} time of day, {3} share. */
    HELD_SO_FAR,
    /** {0} minutes. */
    CAN_BE_POURED,
    HOLD_NOT_BEGUN,
    /** {0} time, {1} planned, {2} what warmed it, {3} share. */
    HELD_IN_THE_END,
    /** {0} reading, {1} {2} working range. */
    WHY_KEPT,
    /** {0} melting of form VI, {1} of the melt. */
    WHY_NOT_MELTED,
    /** {0} reading, {1} limit. */
    WHY_SEED_OUT,
    /** {0} drift, {1} end, {2} {3} working range. */
    WHY_BOX,
    /** {0} share, {1} limit. */
    WHY_THICK,
    /** {0} time, {1} share. */
    WHY_OVER_WITH_SHARE,
    /** {0} time. */
    WHY_OVER,
    /** {0} temperature. */
    AS_IT_IS,
    /** {0} share. */
    SHARE_IN_RANGE
}
