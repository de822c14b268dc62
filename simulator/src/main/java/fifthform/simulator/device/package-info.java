/** Adapters that are not there: a kitchen in numbers heard through the bytes a real adapter would send. */
package fifthform.simulator.device;
