package fifthform.monitor.texts;

/** What Watch says while the maker looks back, and when something in the program stumbles. */
public enum LiveText implements Text {
    /** {0} how long ago. */
    LOOKING_BACK,
    /** {0} how long ago, {1} key back to now. */
    LOOKING_BACK_KEYS,
    NOTHING_EARLIER,
    ALARM_FIRST,
    IS_NOW,
    WARM_AIR_NEEDS_NO_KEY,
    NOTHING_MORE_TO_SAY,
    /** {0} seconds. */
    BLOWING,
    /** {0} the key's cap. */
    KEY_STUMBLED,
    SOUND_STUMBLED,
    FAR_TITLE,
    /** {0} distance. */
    FAR_READABLE
}
