/** Where inputs come from: live, from readers and keys, or from a recording, paced. */
package fifthform.monitor.intake;
