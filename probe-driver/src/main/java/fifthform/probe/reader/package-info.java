/** The thread per probe: read, stamp, decode, hand on, and look for the adapter again when it has gone. */
package fifthform.probe.reader;
