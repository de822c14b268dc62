package fifthform.curves.recipe;

import fifthform.curves.check.Require;

/** What a chocolate is made of, as fractions of its mass; the four sum to 1 within 0.001. */
public record Composition(
        double cocoaButterFraction, double milkFatFraction, double sugarFraction, double otherFraction) {
    public Composition {
        Require.within(cocoaButterFraction, 0, 1, "cocoaButterFraction");
        Require.within(milkFatFraction, 0, 1, "milkFatFraction");
        Require.within(sugarFraction, 0, 1, "sugarFraction");
        Require.within(otherFraction, 0, 1, "otherFraction");
        double sum = cocoaButterFraction + milkFatFraction + sugarFraction + otherFraction;
        if (Math.abs(sum - 1) > 0.001) throw new IllegalArgumentException("fractions must sum to 1, sum was " + sum);
    }

    /** All fat, as a fraction of the chocolate's mass. */
    public double fatFraction() {
        return cocoaButterFraction + milkFatFraction;
    }

    /** Milk fat as a fraction of all fat; 0 where there is no fat. */
    public double milkFatInFatFraction() {
        return fatFraction() == 0 ? 0 : milkFatFraction / fatFraction();
    }
}
