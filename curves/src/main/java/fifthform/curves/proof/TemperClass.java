package fifthform.curves.proof;

import java.util.Locale;

/** How a sample turned out. */
public enum TemperClass {
    NO_TEMPER,
    UNDER,
    IN_TEMPER,
    OVER,
    UNCLEAR;

    /** The word in files: {@code no-temper}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The class of this much stable seed, as the project's crystal model parts them: own choice, no published edges. */
    static TemperClass ofSeed(double fractionOfFat) {
        if (fractionOfFat < TemperScale.NONE_BELOW) return NO_TEMPER;
        if (fractionOfFat < TemperScale.UNDER_BELOW) return UNDER;
        return fractionOfFat <= TemperScale.OVER_ABOVE ? IN_TEMPER : OVER;
    }
}
