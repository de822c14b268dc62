package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Part.BULK;
import static fifthform.simulator.bowl.Part.CLOTH;
import static fifthform.simulator.bowl.Part.COLD;
import static fifthform.simulator.bowl.Part.COLD_KILOGRAMS;
import static fifthform.simulator.bowl.Part.DIMENSION;
import static fifthform.simulator.bowl.Part.FILM;
import static fifthform.simulator.bowl.Part.FILM_KILOGRAMS;
import static fifthform.simulator.bowl.Part.FROM_BLOWER;
import static fifthform.simulator.bowl.Part.FROM_BURNER;
import static fifthform.simulator.bowl.Part.HOT;
import static fifthform.simulator.bowl.Part.HOT_KILOGRAMS;
import static fifthform.simulator.bowl.Part.LAYER;
import static fifthform.simulator.bowl.Part.POT;
import static fifthform.simulator.bowl.Part.SPOON;
import static fifthform.simulator.bowl.Part.SURFACE;
import static fifthform.simulator.bowl.Part.TO_ROOM;
import static fifthform.simulator.bowl.Part.WALL;
import static fifthform.simulator.bowl.Part.WARM;
import static fifthform.simulator.bowl.Part.WARM_KILOGRAMS;
import static fifthform.simulator.bowl.Part.WITH_VAPOUR;

import java.time.Duration;

/** The way of one state through equal steps while the hands stay as they are. Lives within one {@link Kitchen#advance}. */
final class Passage {
    /** A film thinner than this counts as gone, m. */
    private static final double GONE_METRES = 1e-5;

    /** A probe in water that moves follows within seconds; a guess (no source). */
    private static final double BATH_TIP_LAG_SECONDS = 5;

    private final Kitchen kitchen;
    private final Hands hands;
    private final KitchenState before;
    private final HeatFlow flow;
    private final ImplicitStep method = new ImplicitStep();
    private final double stepSeconds;
    private final double[] heat = new double[DIMENSION];
    private final Follower sheath;
    private final Follower junction;
    private final Follower bathTip;
    private final double stemFraction;
    private Crystals layer;
    private Crystals bulk;
    private Crystals surface;
    private double aroundTip;
    private double aroundBathTip;
    private double sheathCelsius;
    private double tipCelsius;
    private double bathTipCelsius;

    Passage(Kitchen kitchen, Hands hands, KitchenState before, double stepSeconds) {
        this.kitchen = kitchen;
        this.hands = hands;
        this.before = before;
        this.stepSeconds = stepSeconds;
        flow = new HeatFlow(kitchen, hands, before.seedKilograms(), before.splashKilograms());
        Tip tip = kitchen.tip();
        sheath = Follower.of(tip.sheathSeconds(hands.stirVigourFraction(), hands.probe()), stepSeconds);
        junction = Follower.of(tip.junctionSeconds(), stepSeconds);
        bathTip = Follower.of(BATH_TIP_LAG_SECONDS, stepSeconds);
        stemFraction = hands.probe() == ProbePlace.OUT ? 0 : tip.stemFraction();
        layer = before.layer().crystals();
        bulk = before.bulk().crystals();
        surface = before.surface().crystals();
        sheathCelsius = before.probes().sheathCelsius();
        tipCelsius = before.probes().tipCelsius();
        bathTipCelsius = before.probes().bathCelsius();
        heats();
    }

    private void heats() {
        Chocolate chocolate = kitchen.chocolate();
        heat[HOT_KILOGRAMS] = kitchen.hotBath().waterKilograms() - before.hot().goneKilograms();
        heat[WARM_KILOGRAMS] =
                kitchen.warmBath().waterKilograms() - before.warm().goneKilograms();
        heat[COLD_KILOGRAMS] =
                kitchen.coldWater().waterKilograms() - before.cold().goneKilograms();
        heat[FILM_KILOGRAMS] = before.filmKilograms();
        flow.freezeCapacities(heat);
        heat[HOT] = flow.capacity(HOT) * before.hotBathCelsius();
        heat[POT] = flow.capacity(POT) * before.potCelsius();
        heat[WARM] = flow.capacity(WARM) * before.warmBathCelsius();
        heat[COLD] = flow.capacity(COLD) * before.coldWaterCelsius();
        heat[FILM] = flow.capacity(FILM) * before.filmCelsius();
        heat[WALL] = flow.capacity(WALL) * before.wallCelsius();
        heat[LAYER] = flow.kilograms(LAYER) * before.layer().joulesPerKilogram(chocolate);
        heat[BULK] = flow.kilograms(BULK) * before.bulk().joulesPerKilogram(chocolate);
        heat[SURFACE] = flow.kilograms(SURFACE) * before.surface().joulesPerKilogram(chocolate);
        heat[SPOON] = flow.capacity(SPOON) * before.spoonCelsius();
        heat[CLOTH] = flow.capacity(CLOTH) * before.clothCelsius();
        heat[FROM_BURNER] = before.ledger().fromBurnerJoules();
        heat[FROM_BLOWER] = before.ledger().fromBlowerJoules();
        heat[TO_ROOM] = before.ledger().toRoomJoules();
        heat[WITH_VAPOUR] = before.ledger().withVapourJoules();
    }

    HeatFlow flow() {
        return flow;
    }

    double[] heat() {
        return heat;
    }

    /** Stored in everything, J. */
    double storedJoules() {
        double sum = 0;
        for (int part = 0; part < Part.STORING; part++) {
            if (part != POT || kitchen.hotBath().thickPot()) sum += heat[part];
        }
        return sum;
    }

    KitchenState after(long steps, Duration elapsed) {
        for (long step = 0; step < steps; step++) {
            flow.keep(layer, bulk, surface);
            flow.freeze(heat);
            if (step == 0) lookAround(flow.celsius(heat));
            method.step(flow, heat, stepSeconds);
            crystals();
            drying();
            probes();
        }
        return state(elapsed);
    }

    /** What melted or formed, and what stirring carried from one portion to the next; heat contents are kept. */
    private void crystals() {
        layer = settled(layer, LAYER);
        bulk = settled(bulk, BULK);
        surface = settled(surface, SURFACE);
        layer = mixedWithBulk(layer, LAYER);
        surface = mixedWithBulk(surface, SURFACE);
    }

    private Crystals settled(Crystals crystals, int part) {
        double content = heat[part] / flow.kilograms(part);
        return crystals.settled(kitchen.chocolate(), content, stepSeconds, hands.stirVigourFraction());
    }

    private Crystals mixedWithBulk(Crystals outside, int part) {
        if (outside.equals(bulk)) return outside;
        double moved = Math.min(flow.mixedKilogramsPerSecond(part) * stepSeconds, flow.kilograms(part) / 2);
        if (moved == 0) return outside;
        Crystals mixed = outside.mixedWith(bulk, moved / flow.kilograms(part));
        Crystals mixedBulk = bulk.mixedWith(outside, moved / flow.kilograms(BULK));
        heat[part] -= moreBound(outside, mixed, part);
        heat[BULK] -= moreBound(bulk, mixedBulk, BULK);
        bulk = mixedBulk;
        return mixed;
    }

    private double moreBound(Crystals from, Crystals to, int part) {
        Chocolate chocolate = kitchen.chocolate();
        return flow.kilograms(part) * (to.boundJoulesPerKilogram(chocolate) - from.boundJoulesPerKilogram(chocolate));
    }

    private void drying() {
        if (heat[FILM_KILOGRAMS] == 0) return;
        double thinnest = Water.KILOGRAMS_PER_CUBIC_METRE * GONE_METRES * flow.wettedSquareMetres();
        if (heat[FILM_KILOGRAMS] > thinnest) return;
        heat[WITH_VAPOUR] += heat[FILM];
        heat[FILM] = 0;
        heat[FILM_KILOGRAMS] = 0;
    }

    private void probes() {
        flow.freezeCapacities(heat);
        flow.keep(layer, bulk, surface);
        double tipWas = aroundTip;
        double bathWas = aroundBathTip;
        double sheathWas = sheathCelsius;
        lookAround(flow.celsius(heat));
        sheathCelsius = sheath.next(sheathCelsius, tipWas, aroundTip);
        tipCelsius = junction.next(tipCelsius, sheathWas, sheathCelsius);
        bathTipCelsius = bathTip.next(bathTipCelsius, bathWas, aroundBathTip);
    }

    private void lookAround(double[] celsius) {
        double air = kitchen.room().celsius();
        double around = kitchen.tip().around(hands.probe(), celsius[BULK], celsius[LAYER], celsius[WALL], air);
        aroundTip = around - stemFraction * (around - air);
        // the bath probe hangs in the pot while the bowl is over it, and waits in the warm water from then on
        aroundBathTip = hands.spot() == Spot.HOT_BATH ? celsius[HOT] : celsius[WARM];
    }

    private KitchenState state(Duration elapsed) {
        double[] celsius = flow.celsius(heat);
        return new KitchenState(
                elapsed,
                hands.spot(),
                new Portion(celsius[BULK], bulk),
                new Portion(celsius[LAYER], layer),
                new Portion(celsius[SURFACE], surface),
                before.seedKilograms(),
                before.splashKilograms(),
                celsius[WALL],
                celsius[FILM],
                heat[FILM_KILOGRAMS],
                new Basin(celsius[HOT], kitchen.hotBath().waterKilograms() - heat[HOT_KILOGRAMS]),
                kitchen.hotBath().thickPot() ? celsius[POT] : celsius[HOT],
                new Basin(celsius[WARM], kitchen.warmBath().waterKilograms() - heat[WARM_KILOGRAMS]),
                new Basin(celsius[COLD], kitchen.coldWater().waterKilograms() - heat[COLD_KILOGRAMS]),
                celsius[SPOON],
                celsius[CLOTH],
                new Probes(sheathCelsius, tipCelsius, bathTipCelsius),
                new HeatLedger(
                        heat[FROM_BURNER],
                        heat[FROM_BLOWER],
                        heat[TO_ROOM],
                        heat[WITH_VAPOUR],
                        before.ledger().withWaterJoules(),
                        before.ledger().wipedOffJoules(),
                        before.ledger().withSeedJoules()));
    }
}
