package fifthform.monitor.settings;

import java.util.Locale;

/** How loud alarms and cues are. No step is silent but says that it is. */
public enum Volume {
    /** No sound at all; Watch says so all the time, and its edge lights up instead. */
    SCREEN_ONLY(Double.NEGATIVE_INFINITY),
    SOFT(-18),
    MEDIUM(-9),
    FULL(0);

    private final double decibels;

    Volume(double decibels) {
        this.decibels = decibels;
    }

    /** Level against the loudest, dB. */
    public double decibels() {
        return decibels;
    }

    /** Whether anything is to be heard. */
    public boolean isHeard() {
        return this != SCREEN_ONLY;
    }

    /** The word in files and options: {@code screen-only}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
