package fifthform.monitor.texts;

/** What is said of the sound. */
public enum SoundText implements Text {
    // SoundTrial.
    THE_VOLUME_IS_SCREEN_ONLY_SO,
    /** {0} speaker state none. */
    THERE_IS,

    // Speaker.
    SOUND,
    SCREEN_ONLY_NO_SOUND,
    NO_SOUND_ON_THIS_COMPUTER
}
