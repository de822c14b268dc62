package fifthform.probe.find;

/** Whether bytes may be sent to a device that is not known yet. */
public enum Asking {
    /** Only listen. */
    NEVER,
    /** The maker has said that what is plugged in may be asked. */
    ALLOWED
}
