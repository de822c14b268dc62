package fifthform.simulator.bowl;

/** Where the bowl can stand in this kitchen. */
public enum Spot {
    /** On the table, on a folded cloth. */
    TABLE,
    /** Over the pot on the burner. */
    HOT_BATH,
    /** In the warm water that the rewarm takes. */
    WARM_BATH,
    /** In cold tap water. */
    COLD_WATER,
    /** Set down on a cloth wrung out of the cold water. */
    COOL_CLOTH,
    /** Wrapped in a cloth wrung out of the warm water. */
    WARM_CLOTH,
    /** On a shelf of the fridge. */
    FRIDGE,
    /** In a box whose air is kept at a temperature. */
    WARM_BOX
}
