/** Heat of chocolate, bowl, baths and room as differential equations; knows nothing of how the monitor thinks. */
package fifthform.simulator.bowl;
