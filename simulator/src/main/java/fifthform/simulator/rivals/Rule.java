package fifthform.simulator.rivals;

/** A rule that knows nothing but the readings: where the chocolate turns if lifted now. A value. */
interface Rule {
    /** After one more reading. */
    Rule after(double atSeconds, double celsius);

    /** Where it turns, °C; not a number while there are too few readings. */
    double turnCelsius();

    /** How fast the readings rise, K/s. */
    double kelvinPerSecond();
}
