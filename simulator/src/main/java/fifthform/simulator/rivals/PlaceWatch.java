package fifthform.simulator.rivals;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Judging;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How often a rival is right about where the bowl stands and which phase it is. */
final class PlaceWatch implements Watch {
    /** After a change of the phase any answer counts as right. */
    private static final Duration GRACE = Duration.ofSeconds(20);

    private static final double STILL_COOLING_KELVIN = 0.5;

    private final JudgedKitchen kitchen;
    private Set<Phase> accepted = EnumSet.noneOf(Phase.class);
    private Instant acceptedSince = Instant.MIN;
    private long steps;
    private long placeRight;
    private long phaseRight;

    PlaceWatch(JudgedKitchen kitchen) {
        this.kitchen = kitchen;
    }

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        Rival rival = (Rival) after.program();
        if (rival.place().isEmpty() || rival.phase().isEmpty()) return;
        steps++;
        if (rival.place().get() == place(after.hands().spot())) placeRight++;
        Set<Phase> now = accepted(after);
        if (!now.equals(accepted)) {
            accepted = now;
            acceptedSince = after.at();
        }
        boolean grace = Duration.between(acceptedSince, after.at()).compareTo(GRACE) <= 0;
        if (grace || now.contains(rival.phase().get())) phaseRight++;
    }

    /** Where it lies between two phases both count. */
    private Set<Phase> accepted(Moment moment) {
        Recipe recipe = kitchen.recipe();
        double shown = kitchen.scale().shows(moment.kitchen().bulkCelsius());
        return switch (((Judging) moment.maker()).phase()) {
            case MELT -> EnumSet.of(Phase.MELT);
            case COOL -> EnumSet.of(Phase.COOL);
            case SEED ->
                shown > recipe.cool().range().highCelsius() + STILL_COOLING_KELVIN
                        ? EnumSet.of(Phase.COOL, Phase.SEED)
                        : EnumSet.of(Phase.SEED);
            case REWARM -> EnumSet.of(Phase.REWARM);
            case WORK, REST ->
                shown < recipe.work().range().lowCelsius()
                        ? EnumSet.of(Phase.REWARM, Phase.WORK)
                        : EnumSet.of(Phase.WORK);
        };
    }

    static Place place(Spot spot) {
        return switch (spot) {
            case HOT_BATH, WARM_BATH -> Place.BATH;
            case COLD_WATER -> Place.COLD_WATER;
            case TABLE, COOL_CLOTH, WARM_CLOTH, WARM_BOX, FRIDGE -> Place.TABLE;
        };
    }

    /** Not a number where it never said. */
    double placeFraction() {
        return placeRight / (double) steps;
    }

    double phaseFraction() {
        return phaseRight / (double) steps;
    }
}
