/** Why bars came out as they did: causes weighed by what was seen, by the batch's own curve, by its logs and by what the maker says. */
package fifthform.curves.fault;
