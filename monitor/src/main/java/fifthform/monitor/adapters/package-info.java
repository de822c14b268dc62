/** Adapters that were used before, one file each: how they talk, what is on their channels, and every check they had. */
package fifthform.monitor.adapters;
