/** The start of a batch in three steps, chocolate, bowl, go, or in none, as last time; without a window. */
package fifthform.monitor.start;
