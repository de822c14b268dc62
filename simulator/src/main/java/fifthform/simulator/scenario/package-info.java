/** Named, seeded, invented batches as text files, and the reader that turns them into kitchens. */
package fifthform.simulator.scenario;
