package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction;
import fifthform.simulator.bowl.Hands;
import java.util.List;

/**
 * Somebody who tempers a batch. Sees the thermometer and hears the program, moves the bowl, and comes to an end by
 * itself whatever is or is not said. Not safe for several threads: whoever runs the kitchen asks.
 */
public interface Maker {
    /** The program says something; makers may take no notice. */
    void told(Event event);

    /** What the hands do from now on until asked again, about eight times a second. */
    Hands next(KitchenView view);

    /** The keys pressed since this was last asked, oldest first: what a maker who tells everything would press. */
    List<MakerAction> presses();

    /** Whether the batch is poured and the maker has gone. */
    boolean done();
}
