package fifthform.curves.phase;

/** How something about the batch is known. */
public enum Evidence {
    /** Nothing has shown it yet; it is what a batch begins with. */
    ASSUMED,
    /** The curve shows it. */
    INFERRED,
    /** The maker said it. */
    TOLD
}
