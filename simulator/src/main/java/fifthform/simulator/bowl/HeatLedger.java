package fifthform.simulator.bowl;

/**
 * Heat that crossed the kitchen's border since it was set up, J; with what is stored it must balance. Water and seed are
 * counted from 0 °C, seed from molten chocolate at 0 °C, so what is cold and solid brings little or less than nothing.
 *
 * @param fromBurnerJoules into the pot
 * @param fromBlowerJoules into the chocolate, by hot air
 * @param toRoomJoules lost to the air by convection and radiation; negative where the room warmed something
 * @param withVapourJoules gone with water that evaporated
 * @param withWaterJoules brought by water that newly clings to the bowl, came with a cloth or was poured into a bath
 * @param wipedOffJoules gone with water into the towel
 * @param withSeedJoules brought by chocolate that was added
 */
public record HeatLedger(
        double fromBurnerJoules,
        double fromBlowerJoules,
        double toRoomJoules,
        double withVapourJoules,
        double withWaterJoules,
        double wipedOffJoules,
        double withSeedJoules) {
    public static final HeatLedger EMPTY = new HeatLedger(0, 0, 0, 0, 0, 0, 0);

    /** What came in less what went out, J. */
    public double netJoules() {
        return fromBurnerJoules
                + fromBlowerJoules
                + withWaterJoules
                + withSeedJoules
                - toRoomJoules
                - withVapourJoules
                - wipedOffJoules;
    }

    /** All that was moved across the border, whichever way, J: what a residual is measured by. */
    public double movedJoules() {
        return Math.abs(fromBurnerJoules)
                + Math.abs(fromBlowerJoules)
                + Math.abs(withWaterJoules)
                + Math.abs(withSeedJoules)
                + Math.abs(toRoomJoules)
                + Math.abs(withVapourJoules)
                + Math.abs(wipedOffJoules);
    }

    HeatLedger wetted(double joules) {
        return new HeatLedger(
                fromBurnerJoules,
                fromBlowerJoules,
                toRoomJoules,
                withVapourJoules,
                withWaterJoules + joules,
                wipedOffJoules,
                withSeedJoules);
    }

    HeatLedger wiped(double joules) {
        return new HeatLedger(
                fromBurnerJoules,
                fromBlowerJoules,
                toRoomJoules,
                withVapourJoules,
                withWaterJoules,
                wipedOffJoules + joules,
                withSeedJoules);
    }

    HeatLedger seeded(double joules) {
        return new HeatLedger(
                fromBurnerJoules,
                fromBlowerJoules,
                toRoomJoules,
                withVapourJoules,
                withWaterJoules,
                wipedOffJoules,
                withSeedJoules + joules);
    }
}
