/** The small recurrent network's training: lessons from simulated kitchens, gradients, and the weights they lead to. */
package fifthform.simulator.training;
