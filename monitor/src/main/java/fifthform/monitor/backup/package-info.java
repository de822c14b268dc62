/** Everything the program keeps in one archive, and back again, here or on another computer. */
package fifthform.monitor.backup;
