package fifthform.probe.protocol;

/** The two tables of 16-bit registers (MODBUS Application Protocol Specification V1.1b3, 4.3; from memory). */
enum RegisterTable {
    HOLDING("holding", 3, 40_001),
    INPUT("input", 4, 30_001);

    private final String word;
    private final int function;
    private final int firstInManuals;

    RegisterTable(String word, int function, int firstInManuals) {
        this.word = word;
        this.function = function;
        this.firstInManuals = firstInManuals;
    }

    /** The word in settings. */
    String word() {
        return word;
    }

    /** The function code that reads it. */
    int function() {
        return function;
    }

    /** What many manuals call register 0. */
    int firstInManuals() {
        return firstInManuals;
    }

    RegisterTable other() {
        return this == HOLDING ? INPUT : HOLDING;
    }
}
