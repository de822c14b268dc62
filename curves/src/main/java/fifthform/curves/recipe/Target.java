package fifthform.curves.recipe;

/** The temperatures of a recipe for which there are sources. */
public enum Target {
    MELT(RecipeKey.MELT_LOW, RecipeKey.MELT_HIGH),
    COOL(RecipeKey.COOL_LOW, RecipeKey.COOL_HIGH),
    WORK(RecipeKey.WORK_LOW, RecipeKey.WORK_HIGH),
    WARN(RecipeKey.WARN, RecipeKey.WARN),
    MELT_OUT(RecipeKey.MELT_OUT, RecipeKey.MELT_OUT),
    SCORCH(RecipeKey.SCORCH, RecipeKey.SCORCH),
    BATH(RecipeKey.BATH, RecipeKey.BATH);

    final RecipeKey low;
    final RecipeKey high;

    Target(RecipeKey low, RecipeKey high) {
        this.low = low;
        this.high = high;
    }

    /** The word in files and for people: {@code melt}, {@code melt-out}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    double lowOf(Recipe recipe) {
        return switch (this) {
            case MELT -> recipe.melt().range().lowCelsius();
            case COOL -> recipe.cool().range().lowCelsius();
            case WORK -> recipe.work().range().lowCelsius();
            case WARN -> recipe.meltOut().warnCelsius();
            case MELT_OUT -> recipe.meltOut().limitCelsius();
            case SCORCH -> recipe.scorchCelsius();
            case BATH -> recipe.rewarmBathCelsius();
        };
    }

    double highOf(Recipe recipe) {
        return switch (this) {
            case MELT -> recipe.melt().range().highCelsius();
            case COOL -> recipe.cool().range().highCelsius();
            case WORK -> recipe.work().range().highCelsius();
            default -> lowOf(recipe);
        };
    }
}
