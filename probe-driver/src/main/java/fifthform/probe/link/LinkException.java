package fifthform.probe.link;

/** A line cannot be opened or has gone. The message says what happened; {@link #whatToDo()} says how to mend it. */
public final class LinkException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String place;
    private final String whatToDo;

    public LinkException(String place, String what, String whatToDo) {
        super(what);
        this.place = place;
        this.whatToDo = whatToDo;
    }

    /** The port or file it is about. */
    public String place() {
        return place;
    }

    public String whatToDo() {
        return whatToDo;
    }
}
