package fifthform.simulator.bowl;

/**
 * The crystals in one portion of the chocolate, as a source and sink of heat; a value. The heat flow holds them still
 * within a step and asks {@link #settled} at its end, so any kinetics that knows its bound heat can stand here.
 */
public interface Crystals {
    /** Share of all that could be solid, 0 to 1: lumps that touch badly. */
    double solidFraction();

    /** Heat it would take to melt them all, J for each kg of chocolate. */
    double boundJoulesPerKilogram(Chocolate chocolate);

    /**
     * The crystals after a while at this heat content. Content is kept: what melts cools the portion, what forms warms it.
     *
     * @param joulesPerKilogram sensible heat above 0 °C less the bound heat, J/kg of chocolate
     * @param seconds how long, s
     * @param vigourFraction stirring, 0 to 1
     */
    Crystals settled(Chocolate chocolate, double joulesPerKilogram, double seconds, double vigourFraction);

    /** As {@link #settled}, for a look ahead that need not be exact where little changes. */
    default Crystals ahead(Chocolate chocolate, double joulesPerKilogram, double seconds, double vigourFraction) {
        return settled(chocolate, joulesPerKilogram, seconds, vigourFraction);
    }

    /** Solid chocolate with crystals of this kind. */
    Crystals solidAlike();

    /** These with {@code otherFraction} (0 to 1) of the mass replaced by the other's. */
    Crystals mixedWith(Crystals other, double otherFraction);
}
