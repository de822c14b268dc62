package fifthform.curves.learning;

import java.util.Locale;

/** How the bars were kept since. */
public enum Kept {
    /** 15 to 20 °C, steady. */
    COOL,
    FRIDGE,
    /** Above 24 °C for a while. */
    WARM,
    /** Warm and cool by turns. */
    SWINGS;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
