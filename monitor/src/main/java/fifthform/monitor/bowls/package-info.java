/** What bowls have taught, one file a bowl: how far each coasts with which amount, and how it answers cold water. */
package fifthform.monitor.bowls;
