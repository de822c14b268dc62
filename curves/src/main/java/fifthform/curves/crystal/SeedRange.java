package fifthform.curves.crystal;

/**
 * The stable seed as three copies of the model have it, kg per kg of fat.
 *
 * @param lower of the copy that reads 0.5 K less; mostly the most
 * @param middle best guess
 * @param higher of the copy that reads 0.5 K more; mostly the least
 */
public record SeedRange(double lower, double middle, double higher) {
    /** One word for the three. */
    public SeedWord word() {
        if (least() >= Copies.LEAST_SEED) return SeedWord.ENOUGH;
        return most() < Copies.LEAST_SEED ? SeedWord.TOO_FEW : SeedWord.DOUBTFUL;
    }

    /** Whether the chocolate is likely to have thickened: more than 6 % of the fat, about 1.6 times as thick. */
    public boolean thick() {
        return middle > Copies.THICK_SEED;
    }

    /** The least of the three. */
    public double least() {
        return Math.min(lower, Math.min(middle, higher));
    }

    /** The greatest of the three. */
    public double most() {
        return Math.max(lower, Math.max(middle, higher));
    }

    /**
     * The long form for who asks: three figures of one digit each, percent of the fat, least, best guess and most, as
     * {@code 0.7}, {@code 2}, {@code 5}; less than 0.01 is 0. More digits would be false.
     */
    public Digits percentOfFat() {
        return new Digits(oneDigit(100 * least()), oneDigit(100 * middle), oneDigit(100 * most()));
    }

    /** Percent of the fat with one significant digit. */
    public record Digits(double least, double bestGuess, double most) {}

    private static double oneDigit(double percent) {
        if (percent < 0.005) return 0;
        double unit = 0.01;
        while (unit * 10 <= percent) unit *= 10;
        double digit = Math.round(percent / unit) * unit;
        // Scaled whole numbers, or 0.07 would come out as 0.07000000000000001.
        return Math.round(digit * 100) / 100.0;
    }
}
