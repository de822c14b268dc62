/** The sealed family of all that the engine may ever learn, each with the time at which it became true. */
package fifthform.curves.input;
