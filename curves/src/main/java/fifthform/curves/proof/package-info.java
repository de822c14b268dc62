/** Proof of temper: the cooling curve of a sample in ice water and the timed smear, what they say and when they say nothing. */
package fifthform.curves.proof;
