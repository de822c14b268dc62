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

    /** The line was given up on purpose, so that another program can use it. */
    public static LinkException released(String place) {
        return PortTrouble.released(place);
    }

    /** The port or file it is about. */
    public String place() {
        return place;
    }

    public String whatToDo() {
        return whatToDo;
    }
}
