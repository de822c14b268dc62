/** What the proof of temper is worth on simulated samples, counted against the seed that was really in them. */
package fifthform.simulator.proofs;
