/** One batch on a sheet of paper: what a report says, in words; how it looks is drawn elsewhere. */
package fifthform.monitor.report;
