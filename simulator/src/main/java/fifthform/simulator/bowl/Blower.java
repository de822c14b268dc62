package fifthform.simulator.bowl;

/**
 * Hot air blown at the top of the chocolate. Common practice, no source: a burst of 3 to 5 s and half a minute of
 * stirring warm a bowl by 0.3 to 1 K (reference schedule). Jet temperatures and coefficients are guesses that give that.
 */
public enum Blower {
    OFF(0, 0),
    /** 80 °C where it meets the chocolate. */
    HAIR_DRYER(80, 60),
    /** 280 °C where it meets the chocolate; covers half of it. */
    HEAT_GUN(280, 35);

    private final double jetCelsius;
    private final double wattsPerSquareMetreKelvin;

    Blower(double jetCelsius, double wattsPerSquareMetreKelvin) {
        this.jetCelsius = jetCelsius;
        this.wattsPerSquareMetreKelvin = wattsPerSquareMetreKelvin;
    }

    double jetCelsius() {
        return jetCelsius;
    }

    /** Over the whole top of the chocolate. */
    double wattsPerSquareMetreKelvin() {
        return wattsPerSquareMetreKelvin;
    }
}
