/** What the looked-at batches of a folder say together, chocolate by chocolate, and in which words. */
package fifthform.monitor.learned;
