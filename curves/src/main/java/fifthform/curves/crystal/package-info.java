/** What the temperature did to the crystals: the kinetics, three copies of them beside a batch, and one word about the seed. */
package fifthform.curves.crystal;
