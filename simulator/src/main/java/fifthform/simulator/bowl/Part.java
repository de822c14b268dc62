package fifthform.simulator.bowl;

/** Places in the vector of heats: parts that store heat in J, the ledger's running sums in J, and water in kg. */
final class Part {
    static final int HOT = 0;
    static final int POT = 1;
    static final int WARM = 2;
    static final int COLD = 3;
    static final int FILM = 4;
    static final int WALL = 5;
    static final int LAYER = 6;
    static final int BULK = 7;
    static final int SURFACE = 8;
    static final int SPOON = 9;
    static final int CLOTH = 10;
    /** So many parts store heat. */
    static final int STORING = 11;

    static final int FROM_BURNER = 11;
    static final int FROM_BLOWER = 12;
    static final int TO_ROOM = 13;
    static final int WITH_VAPOUR = 14;

    static final int HOT_KILOGRAMS = 15;
    static final int WARM_KILOGRAMS = 16;
    static final int COLD_KILOGRAMS = 17;
    static final int FILM_KILOGRAMS = 18;
    /** Length of the vector. */
    static final int DIMENSION = 19;

    private Part() {}
}
