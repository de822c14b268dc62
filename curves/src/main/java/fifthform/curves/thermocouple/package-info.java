/** Thermocouple truth: EMF to temperature and back, cold junctions, what converters make of it, and how far a reading can be trusted. */
package fifthform.curves.thermocouple;
