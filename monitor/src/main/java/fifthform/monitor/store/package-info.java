/** The journal of a session: its format, the thread that writes it, reading it again, and the files there are. */
package fifthform.monitor.store;
