package fifthform.simulator.device;

import java.util.Locale;

/** The unit an instrument is set to. Definitions: BIPM, The International System of Units, 2.3.1; NIST SP 811, B.8. */
enum Scale {
    C,
    F,
    K;

    /** As the setting {@code in} writes it: c, f, k. */
    static Scale ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    double of(double celsius) {
        return switch (this) {
            case C -> celsius;
            case F -> celsius * 9 / 5 + 32;
            case K -> celsius + 273.15;
        };
    }

    /** Its degrees a kelvin. */
    double perKelvin() {
        return this == F ? 9 / 5.0 : 1;
    }
}
