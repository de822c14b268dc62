/** Where the bowl is going: where it turns, when, how sure that is, and until when acting helps. */
package fifthform.curves.forecast;
