/** Where bytes come from: serial ports and recorded bytes. The only place that sees the serial library. */
package fifthform.probe.link;
