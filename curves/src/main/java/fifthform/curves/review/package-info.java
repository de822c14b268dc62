/** One finished batch as figures: what it did, what went wrong first, how it went. */
package fifthform.curves.review;
