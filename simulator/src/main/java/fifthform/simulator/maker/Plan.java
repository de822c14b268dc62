package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.simulator.bowl.Hands;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is settled about the hands before a batch begins, whoever they belong to.
 *
 * @param stirringShare how much of their usual vigour they put into stirring, 0 (the spoon stays away) to 1
 * @param seedGrams seed thrown in once while it cools, 0 for none
 * @param seedAtCelsius when the thermometer has come down to this, 20 to 40 °C
 * @param splashGrams water that comes over the rim when the bowl first goes into the cold water, 0 to 500 g
 * @param interruptions what comes between
 * @param approach how they want to be led to the working range
 * @param beginning what they begin with, as they would tell a program
 * @param holding how long they mean to hold it in the working range, and by what
 * @param boxCelsius what they set a warm box to at first, 15 to 60 °C
 */
public record Plan(
        double stirringShare,
        double seedGrams,
        double seedAtCelsius,
        double splashGrams,
        List<Interruption> interruptions,
        Approach approach,
        Beginning beginning,
        Optional<Holding> holding,
        double boxCelsius) {
    /** Nothing out of the ordinary. Seed at 33.5 °C: just below where seed melts; common practice, no source. */
    public static final Plan USUAL = new Plan(1, 0, 33.5, 0, List.of());

    public Plan {
        Require.within(stirringShare, 0, 1, "stirringShare");
        Require.within(seedGrams, 0, 2000, "seedGrams");
        Require.within(seedAtCelsius, 20, 40, "seedAtCelsius");
        Require.within(splashGrams, 0, 500, "splashGrams");
        interruptions = List.copyOf(interruptions);
        Objects.requireNonNull(approach, "approach");
        Objects.requireNonNull(beginning, "beginning");
        Objects.requireNonNull(holding, "holding");
        Require.within(boxCelsius, 15, 60, "boxCelsius");
    }

    /** The same hands that hold it as planned, from this temperature of the box, °C. */
    public Plan holding(Holding plan, double boxAtFirstCelsius) {
        return new Plan(
                stirringShare,
                seedGrams,
                seedAtCelsius,
                splashGrams,
                interruptions,
                approach,
                beginning,
                Optional.of(plan),
                boxAtFirstCelsius);
    }

    /** The same hands that begin with something else. */
    public Plan beginningWith(Beginning other) {
        return new Plan(
                stirringShare,
                seedGrams,
                seedAtCelsius,
                splashGrams,
                interruptions,
                approach,
                other,
                holding,
                boxCelsius);
    }

    boolean holdsBy(Warmth warmth) {
        return holding.filter(h -> h.warmth() == warmth).isPresent();
    }

    /** Whether they mean to keep it warm in a way of their own, and so take no advice on touches of the bath. */
    boolean warmsInItsOwnWay() {
        return interruptions.stream().anyMatch(each -> Interruption.What.DEEDS.contains(each.what()));
    }

    /** A whole batch, led as the program sees fit and not held for long. */
    public Plan(
            double stirringShare,
            double seedGrams,
            double seedAtCelsius,
            double splashGrams,
            List<Interruption> interruptions) {
        this(
                stirringShare,
                seedGrams,
                seedAtCelsius,
                splashGrams,
                interruptions,
                Approach.TOUCHES_WHERE_UNSURE,
                Beginning.WHOLE,
                Optional.empty(),
                Hands.USUAL_BOX_CELSIUS);
    }
}
