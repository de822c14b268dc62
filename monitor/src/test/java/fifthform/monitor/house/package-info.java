/** What holds the pages at the top of the tree, and the arrows between the rooms, to the code. */
package fifthform.monitor.house;
