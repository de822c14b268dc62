package fifthform.monitor.texts;

/** Why a line is no JSON, or not the JSON that belongs there. */
public enum JsonText implements Text {
    // JsonObject.
    /** {0} key. */
    IS_TOO_LARGE,
    /** {0} key. */
    IS_NOT_A_WHOLE_NUMBER,
    /** {0} key, {1} said. */
    IS_WHICH_IS_NOT_KNOWN,
    /** {0} key. */
    IS_NOT_A_LIST_OF_OBJECTS,
    /** {0} key. */
    IS_NOT_A_LIST_OF_TEXTS,
    /** {0} key. */
    IS_MISSING,
    /** {0} key, {1} one of the six below. */
    IS_NOT,
    A_TEXT,
    A_NUMBER,
    TRUE_OR_FALSE,
    A_WHOLE_NUMBER,
    AN_OBJECT,
    A_LIST,

    // JsonReading.
    IT_IS_NOT_A_JSON_OBJECT,
    SOMETHING_STANDS_AFTER_THE,
    IT_BREAKS_OFF,
    /** {0} column. */
    FROM_CHARACTER_ON_IT_IS_NO,
    NO_JSON
}
