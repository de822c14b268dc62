package fifthform.probe.link;

import fifthform.probe.LineSettings;

/**
 * An open line whose settings can be changed while it stays open. Many boards restart whenever their port is opened, so
 * whoever tries one speed after the other must not open it for each.
 */
public interface TunableLink extends ByteLink {
    /**
     * Reads and writes with other settings from now on; what was received with the old ones and not yet read is dropped.
     *
     * @throws LinkException the line is gone or refuses the settings
     */
    void tune(LineSettings line) throws LinkException;
}
