package fifthform.curves.situation;

/** Whether the bowl's probe is where it should be, as far as the maker said. */
public enum ProbePlace {
    IN_THE_CHOCOLATE,
    /** Out on purpose, while rinsing or pouring: its readings say nothing about the chocolate. */
    OUT
}
