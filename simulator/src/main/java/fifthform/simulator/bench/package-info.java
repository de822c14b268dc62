/** Whole batches in virtual time without threads, for tests and statistics. */
package fifthform.simulator.bench;
