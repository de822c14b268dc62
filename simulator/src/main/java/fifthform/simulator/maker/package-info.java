/** Hands: makers who act on the kitchen, those who follow cues and those who go their own way. */
package fifthform.simulator.maker;
