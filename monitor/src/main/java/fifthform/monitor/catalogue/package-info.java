/** Finds recipe files: those built in and the maker's own. */
package fifthform.monitor.catalogue;
