package fifthform.simulator.maker;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts.Probe;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** One look of an {@link Explorer} at the kitchen. Lives within one {@link Explorer#next}. */
final class ExplorerAtWork {
    private final Explorer before;
    private final Instant at;
    private final double shown;
    private final ProbePlace probe;
    private int stay;
    private Instant since;
    private double atFirst;
    private Spoon spoon;
    private Optional<Instant> wipeAt;
    private double seedLeft;
    private Luck luck;

    ExplorerAtWork(Explorer explorer, KitchenView view) {
        before = explorer;
        at = view.at();
        probe = explorer.probe(at);
        // Nobody goes by a thermometer that hangs in the air.
        shown = probe == ProbePlace.OUT ? Double.NaN : view.shownCelsius().orElse(Double.NaN);
        stay = explorer.stay();
        since = explorer.begunAt().isPresent() ? explorer.since() : at;
        atFirst = explorer.atFirstCelsius();
        spoon = explorer.spoon();
        wipeAt = explorer.wipeAt();
        seedLeft = explorer.seedLeftGrams();
        luck = explorer.luck();
    }

    Next next() {
        Spot from = before.begunAt().isPresent() ? spot(before.stay()) : Spot.TABLE;
        goOn();
        Spot spot = spot(stay);
        List<Input> presses = List.of();
        if (spot != from) {
            spoon = spoon.keptOn(at);
            boolean wipes = spot == Spot.TABLE && chance() < before.plan().wipesFraction();
            wipeAt = wipes ? Optional.of(at.plus(before.plan().wipesAfter())) : Optional.empty();
            presses = List.of(new BowlMoved(at, Places.of(spot)));
        }
        spoon = spoon.at(at);
        Towel towel = wipe();
        double seedGrams = seed(spot);
        Hands hands = new Hands(spot, spoon.vigourFraction(), towel, Blower.OFF, probe);
        Probe place = probe == ProbePlace.OUT ? Probe.OUT : Probe.IN_THE_CHOCOLATE;
        return new Next(after(), new Acts(hands, place, seedGrams, 0, 0, presses));
    }

    private void goOn() {
        List<Stay> stays = before.plan().stays();
        if (before.outOfTime(at)) stay = stays.size();
        while (stay < stays.size()) {
            double lasted = Duration.between(since, at).toMillis() / 1000.0;
            boolean leftOut = lasted == 0 && stays.get(stay).leftOut(shown);
            if (!leftOut && !stays.get(stay).over(lasted, shown, atFirst)) return;
            stay++;
            since = at;
            atFirst = shown;
        }
    }

    private Spot spot(int index) {
        List<Stay> stays = before.plan().stays();
        return index < stays.size() ? stays.get(index).spot() : Spot.TABLE;
    }

    private Towel wipe() {
        if (wipeAt.isEmpty() || at.isBefore(wipeAt.get())) return Towel.LEFT;
        wipeAt = Optional.empty();
        return Towel.WIPING;
    }

    private double seed(Spot spot) {
        boolean cooling = spot == Spot.COLD_WATER || spot == Spot.TABLE;
        if (seedLeft == 0 || !cooling || !(shown <= before.plan().seedAtCelsius())) return 0;
        double grams = seedLeft;
        seedLeft = 0;
        return grams;
    }

    private double chance() {
        double drawn = luck.uniform();
        luck = luck.after();
        return drawn;
    }

    private Explorer after() {
        return new Explorer(
                before.plan(),
                stay,
                Optional.of(before.begunAt().orElse(at)),
                since,
                atFirst,
                spoon,
                wipeAt,
                seedLeft,
                luck);
    }
}
