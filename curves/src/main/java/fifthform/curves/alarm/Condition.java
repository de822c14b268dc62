package fifthform.curves.alarm;

/** What an alarm's condition says at one moment. */
public enum Condition {
    /** Beyond the limit. */
    MET,
    /** Within the deadband: neither here nor there. */
    BETWEEN,
    /** Well on the right side. */
    OVER,
    /** There is no good reading to say: the alarm stays as it is. */
    UNKNOWN;

    /** Met where {@code beyondKelvin} is 0 or more, over where it is {@code deadbandKelvin} or more below that. */
    public static Condition high(double beyondKelvin, double deadbandKelvin) {
        if (beyondKelvin >= 0) return MET;
        return beyondKelvin > -deadbandKelvin ? BETWEEN : OVER;
    }

    /** Two witnesses: met where both say so, over where both say so, else between. */
    Condition with(Condition other) {
        return this == other ? this : BETWEEN;
    }

    public static Condition when(boolean met) {
        return met ? MET : OVER;
    }
}
