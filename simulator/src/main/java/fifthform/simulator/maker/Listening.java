package fifthform.simulator.maker;

/** What somebody makes of the program. */
enum Listening {
    /** Takes no notice. */
    DEAF,
    /** Goes by the thermometer until the program speaks, and by the program from then on. */
    WHEN_SPOKEN_TO,
    /** Waits to be told. */
    ALWAYS
}
