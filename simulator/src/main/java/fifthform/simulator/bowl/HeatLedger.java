package fifthform.simulator.bowl;

/**
 * Heat that crossed the kitchen's border since it was set up, J; with what is stored it must balance.
 *
 * @param fromBurnerJoules into the pot
 * @param toRoomJoules lost to the air; negative where the room warmed something
 * @param withWaterJoules brought by water that newly clings to the bowl, counted from 0 °C
 * @param wipedOffJoules gone with water into the towel, counted from 0 °C
 */
public record HeatLedger(double fromBurnerJoules, double toRoomJoules, double withWaterJoules, double wipedOffJoules) {
    public static final HeatLedger EMPTY = new HeatLedger(0, 0, 0, 0);

    /** What came in less what went out, J. */
    public double netJoules() {
        return fromBurnerJoules + withWaterJoules - toRoomJoules - wipedOffJoules;
    }

    HeatLedger wetted(double joules) {
        return new HeatLedger(fromBurnerJoules, toRoomJoules, withWaterJoules + joules, wipedOffJoules);
    }

    HeatLedger wiped(double joules) {
        return new HeatLedger(fromBurnerJoules, toRoomJoules, withWaterJoules, wipedOffJoules + joules);
    }
}
