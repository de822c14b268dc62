/** What makers saw on their bars, beside the session: a file of its own to which lines are only ever added. */
package fifthform.monitor.looks;
