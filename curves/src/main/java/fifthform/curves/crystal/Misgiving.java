package fifthform.curves.crystal;

/** Why the model's word is not taken as it comes; over with the next full melt, {@link #READINGS} with a good reading. */
public enum Misgiving {
    /** For more than two minutes nothing was read. */
    GAP(true),
    /** The last reading was no temperature a bowl of chocolate can have. */
    READINGS(true),
    /** Nobody saw it melt: how it stood when the session began is not known. */
    START_UNKNOWN(false),
    /** Seed went in that nobody weighed, or into an amount that nobody said. */
    SEED_UNKNOWN(false),
    /** It was not held hot long enough to be sure that every crystal and its memory are gone. */
    MELT_UNSURE(false);

    private final boolean everyWord;

    Misgiving(boolean everyWord) {
        this.everyWord = everyWord;
    }

    /** Whether not even "enough" can be said. */
    public boolean spoilsEveryWord() {
        return everyWord;
    }

    /** The word that can be said; where only more may be there than the model knows, "enough" stays. */
    SeedWord of(SeedWord word) {
        return everyWord || word == SeedWord.TOO_FEW ? SeedWord.DOUBTFUL : word;
    }
}
