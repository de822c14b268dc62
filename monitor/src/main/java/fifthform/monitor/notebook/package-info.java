/** All batches as rows: read, kept in an index, filtered, sorted, searched, compared, counted and put away. */
package fifthform.monitor.notebook;
