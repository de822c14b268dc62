package fifthform.curves.plan;

/** How many standard deviations bands and margins are wide. Quantiles of the normal distribution. */
final class Band {
    /** Between −1.645 and 1.645 lie nine of ten. */
    static final double NINE_IN_TEN = 1.645;

    /** Above 2.6 lie fewer than one in two hundred. */
    static final double ONE_IN_TWO_HUNDRED = 2.6;

    private Band() {}
}
