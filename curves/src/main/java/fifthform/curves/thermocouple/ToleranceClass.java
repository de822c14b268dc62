package fifthform.curves.thermocouple;

/** Tolerance classes of IEC 60584-1; {@link #UNKNOWN} where nobody said. */
public enum ToleranceClass {
    CLASS_1,
    CLASS_2,
    CLASS_3,
    UNKNOWN;

    /** The word in files: {@code 1}, {@code 2}, {@code 3}, {@code unknown}. */
    public String word() {
        return this == UNKNOWN ? "unknown" : name().substring("CLASS_".length());
    }
}
