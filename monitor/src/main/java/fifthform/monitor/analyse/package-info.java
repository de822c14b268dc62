/** A batch as lines for scripts: one answer a reading, and a summary at the end. */
package fifthform.monitor.analyse;
