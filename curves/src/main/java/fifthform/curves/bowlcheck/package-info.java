/** Whether this is the bowl it is said to be: how it answers cold water, held against how it answered before. */
package fifthform.curves.bowlcheck;
