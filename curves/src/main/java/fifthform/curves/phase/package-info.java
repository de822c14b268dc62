/** The batch as a procedure: which phase, where the bowl stands, how far things have come; from the curve or by key. */
package fifthform.curves.phase;
