package fifthform.simulator.bowl;

/** A state with some of it replaced, all else as it was. */
final class Change {
    private final KitchenState from;
    private Portion bulk;
    private double seedKilograms;
    private double splashKilograms;
    private double filmKilograms;
    private double filmCelsius;
    private double clothCelsius;
    private Basin hot;
    private Basin warm;
    private Basin cold;
    private HeatLedger ledger;

    private Change(KitchenState from) {
        this.from = from;
        bulk = from.bulk();
        seedKilograms = from.seedKilograms();
        splashKilograms = from.splashKilograms();
        filmKilograms = from.filmKilograms();
        filmCelsius = from.filmCelsius();
        clothCelsius = from.clothCelsius();
        hot = from.hot();
        warm = from.warm();
        cold = from.cold();
        ledger = from.ledger();
    }

    static Change of(KitchenState state) {
        return new Change(state);
    }

    Change bulk(Portion portion, double seedKilogramsInIt) {
        bulk = portion;
        seedKilograms = seedKilogramsInIt;
        return this;
    }

    Change splash(double kilograms) {
        splashKilograms = kilograms;
        return this;
    }

    Change film(double kilograms, double celsius) {
        filmKilograms = kilograms;
        filmCelsius = celsius;
        return this;
    }

    Change cloth(double celsius) {
        clothCelsius = celsius;
        return this;
    }

    Change hot(Basin basin) {
        hot = basin;
        return this;
    }

    Change warm(Basin basin) {
        warm = basin;
        return this;
    }

    Change cold(Basin basin) {
        cold = basin;
        return this;
    }

    Change ledger(HeatLedger next) {
        ledger = next;
        return this;
    }

    KitchenState done() {
        return new KitchenState(
                from.elapsed(),
                from.spot(),
                bulk,
                from.layer(),
                from.surface(),
                seedKilograms,
                splashKilograms,
                from.wallCelsius(),
                filmCelsius,
                filmKilograms,
                hot,
                from.potCelsius(),
                warm,
                cold,
                from.spoonCelsius(),
                clothCelsius,
                from.probes(),
                ledger);
    }
}
