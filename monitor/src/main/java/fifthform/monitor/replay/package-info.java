/** A finished batch at a desk: what was read and told then, what is computed now, and everything the Replay screen says. */
package fifthform.monitor.replay;
