/** A plan in words: the page for the bench, the card for an evening without a computer, and lines for scripts. */
package fifthform.monitor.plan;
