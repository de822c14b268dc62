package fifthform.monitor.app;

/** What the program tells scripts when it ends. */
enum Exit {
    DONE(0),
    /** Done, and the answer is "no": a check failed, a session is damaged. */
    ANSWER_IS_NO(1),
    NOT_UNDERSTOOD(2),
    /** No probe, or it cannot be opened. */
    NO_PROBE(3),
    /** A file cannot be read or written. */
    FILE(4),
    /** A fault of the program. */
    FAULT(70);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
