/** What a program's alarms were worth in simulated batches, counted against how the chocolate really was. */
package fifthform.simulator.alarms;
