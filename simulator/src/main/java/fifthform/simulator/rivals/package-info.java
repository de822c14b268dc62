/** Who forecasts better: the engine, rules to compare it with, kitchens that judge them, and the figures. */
package fifthform.simulator.rivals;
