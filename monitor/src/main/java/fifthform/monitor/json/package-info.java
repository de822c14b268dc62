/** Small JSON objects, one a line, with numbers that are written the same on every JDK. */
package fifthform.monitor.json;
