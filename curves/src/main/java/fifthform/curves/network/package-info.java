/** The trained network that guesses, from the readings so far, where a lifted bowl would turn. */
package fifthform.curves.network;
