/** What looks at the bars say of the heat before: a batch's dose, its outcome, and the maker's own limit with its band. */
package fifthform.curves.learning;
