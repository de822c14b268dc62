package fifthform.simulator.bowl;

/** Properties of liquid water, textbook values as in the reference table of bath examples. */
final class Water {
    static final double JOULES_PER_KILOGRAM_KELVIN = 4180;
    static final double KILOGRAMS_PER_CUBIC_METRE = 1000;

    private Water() {}
}
