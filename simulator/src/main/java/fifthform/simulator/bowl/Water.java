package fifthform.simulator.bowl;

/** Properties of liquid water, textbook values as in the reference table of bath examples; conductivity from memory. */
final class Water {
    static final double JOULES_PER_KILOGRAM_KELVIN = 4180;
    static final double KILOGRAMS_PER_CUBIC_METRE = 1000;

    /** At 40 °C; handbook value from memory. */
    static final double WATTS_PER_METRE_KELVIN = 0.63;

    /** At sea level. */
    static final double BOILS_AT_CELSIUS = 100;

    private Water() {}
}
