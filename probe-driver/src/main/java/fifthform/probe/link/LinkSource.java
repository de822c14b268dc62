package fifthform.probe.link;

/** Where a line can be opened, again and again: each attempt makes a new {@link ByteLink}. */
public interface LinkSource {
    /** The port or file in words for people, for example {@code /dev/ttyUSB0}. */
    String place();

    /**
     * Opens a fresh line.
     *
     * @throws LinkException it cannot be opened now; trying again later may help
     */
    ByteLink open() throws LinkException;
}
