/** One class per way in which adapters talk; bytes in, signals out, no clock, no thread, no IO. */
package fifthform.probe.protocol;
