/** The loop of a session: next input, journal, step, publish. */
package fifthform.monitor.session;
