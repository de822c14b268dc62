/** Samples that were proved, one file each, and what is known of each chocolate in each cup: calibrations and own good curves. */
package fifthform.monitor.proofs;
