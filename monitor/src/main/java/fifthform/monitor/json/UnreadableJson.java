package fifthform.monitor.json;

/** A text is no JSON object, or one of its values is missing or not of the kind that belongs there. */
public final class UnreadableJson extends Exception {
    private static final long serialVersionUID = 1L;

    public UnreadableJson(String what) {
        super(what);
    }
}
