/** What differs between batches whose bars were marked and those whose were fine: few things fixed beforehand, exact tests, one suggestion at most. */
package fifthform.curves.contrast;
