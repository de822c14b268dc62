/** A spoon of chocolate cooling in a cup of ice water, as a monitor never sees it: a shell and a core, each with crystals of its own. */
package fifthform.simulator.tube;
