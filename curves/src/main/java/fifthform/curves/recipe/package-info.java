/** A chocolate, its composition, targets and limits as data with sources; text to {@code Recipe} and back. */
package fifthform.curves.recipe;
