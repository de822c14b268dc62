package fifthform.curves.thermocouple;

import fifthform.curves.constants.PackedTable;
import java.util.OptionalDouble;

/** Tolerance classes of IEC 60584-1; {@link #UNKNOWN} where nobody said. */
public enum ToleranceClass {
    CLASS_1,
    CLASS_2,
    CLASS_3,
    /**
     * Nobody said: taken as class 2. Whoever sells the dearer class 1 says so, and wire beyond class 2 may not carry the
     * letter of its type at all; class 3 is for the cold. So class 2 is the most that may be wrong with an honest probe of
     * which nothing is known, and nothing smaller can be claimed for it.
     */
    UNKNOWN;

    private static final PackedTable TABLE = PackedTable.read("thermocouple/tolerance.csv");

    /** The word in files: {@code 1}, {@code 2}, {@code 3}, {@code unknown}. */
    public String word() {
        return this == UNKNOWN ? "unknown" : name().substring("CLASS_".length());
    }

    /**
     * How far new wire of this class may be from the reference function, ± K; a limit, not a standard uncertainty. Where a
     * class does not reach, as class 3 above 40 °C, class 2 is assumed, and beyond the ends of class 2 its formula goes on.
     *
     * <p>Source: IEC 60584-1:2013, from memory and secondary sources, in {@code thermocouple/tolerance.csv}.
     *
     * @param celsius temperature of the tip, °C
     */
    public double limitKelvin(ThermocoupleType type, double celsius) {
        return limit(type, word(), celsius)
                .orElseGet(() -> greater(type, CLASS_2.word(), celsius).orElseThrow());
    }

    private static OptionalDouble limit(ThermocoupleType type, String word, double celsius) {
        PackedTable rows = TABLE.where("type", type.name()).where("class", word);
        boolean reaches = rows.rows().stream()
                .anyMatch(
                        row -> celsius >= rows.number(row, "range_lo_C") && celsius <= rows.number(row, "range_hi_C"));
        return reaches ? greater(type, word, celsius) : OptionalDouble.empty();
    }

    private static OptionalDouble greater(ThermocoupleType type, String word, double celsius) {
        PackedTable rows = TABLE.where("type", type.name()).where("class", word);
        return rows.rows().stream()
                .mapToDouble(row ->
                        Math.max(rows.number(row, "fixed_K"), rows.number(row, "share_of_abs_t") * Math.abs(celsius)))
                .findFirst();
    }
}
