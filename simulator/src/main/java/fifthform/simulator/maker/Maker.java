package fifthform.simulator.maker;

import fifthform.curves.engine.Event;

/**
 * Somebody who tempers a batch, at one moment. Sees the thermometer and hears the program, moves the bowl, and comes to
 * an end by itself whatever is or is not said. A value: asked twice, it answers twice the same, and any moment can be
 * gone on from in two ways.
 */
public interface Maker {
    /** The same somebody once the program has said this; makers may take no notice. */
    Maker told(Event event);

    /** What is done from now on until asked again, two to eight times a second, and who does it then. */
    Next next(KitchenView view);

    /** Whether the batch is poured and the maker has gone. */
    boolean done();
}
