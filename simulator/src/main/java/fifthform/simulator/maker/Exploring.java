package fifthform.simulator.maker;

import fifthform.simulator.bowl.Spot;

/** A maker who explores, and how the chocolate is usually stirred in such hands. */
public interface Exploring extends Maker {
    /** Over which water the dips of the rewarm are. */
    Spot rewarm();

    /** Share of the time in which the spoon stirs, 0 to 1. */
    double stirringShare();

    /** Mean vigour while it does, 0 to 1. */
    double stirringVigour();
}
