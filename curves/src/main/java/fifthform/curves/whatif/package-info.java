/** What if: a past batch's kitchen fitted by hindsight and gone through again with one act changed; always simulated. */
package fifthform.curves.whatif;
