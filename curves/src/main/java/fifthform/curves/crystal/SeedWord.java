package fifthform.curves.crystal;

/** What is said about the stable seed. */
public enum SeedWord {
    /** Even the copy that reads the temperature least favourably has 0.5 % of the fat. */
    ENOUGH("enough"),
    /** The copies disagree, or the readings do not carry a word. */
    DOUBTFUL("doubtful"),
    /** Even the most favourable copy has less than 0.5 % of the fat. */
    TOO_FEW("too few");

    private final String word;

    SeedWord(String word) {
        this.word = word;
    }

    /** The word in files and on screens. */
    public String word() {
        return word;
    }

    /** The word of this spelling; a fault of the caller where there is none. */
    public static SeedWord fromWord(String word) {
        for (SeedWord each : values()) if (each.word.equals(word)) return each;
        throw new IllegalArgumentException("no word about the seed: " + word);
    }
}
