/** A simulated bowl to practise on, through the same readers as a real probe. */
package fifthform.monitor.practice;
