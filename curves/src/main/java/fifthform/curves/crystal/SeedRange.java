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
}
