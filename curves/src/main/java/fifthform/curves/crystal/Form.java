package fifthform.curves.crystal;

/** The crystal forms of cocoa butter that the model follows, from the least stable to the most. */
public enum Form {
    /** II, alpha: only below about 20 °C. The model's A. */
    TWO("A"),
    /** III and IV, beta prime: made in the cool step, must melt on the rewarm. The model's B. */
    FOUR("B"),
    /** V, beta: the seed that is wanted. The model's V. */
    FIVE("V"),
    /** VI, beta: slow bloom form, also seed powder. The model's S. */
    SIX("S");

    private final String letter;

    Form(String letter) {
        this.letter = letter;
    }

    /** Its letter in the equations and in {@link Constants}. */
    String letter() {
        return letter;
    }
}
