/** The command line and the one place that chooses implementations and puts them together. */
package fifthform.monitor.app;
