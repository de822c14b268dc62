package fifthform.simulator.bench;

import fifthform.curves.learning.OwnLimit;

/**
 * What was learned of a maker whose limit is known.
 *
 * @param truly the limit, °C
 * @param learned what the program says
 */
record LearnedLimit(double truly, OwnLimit learned) {
    static LearnedLimit of(KnownHarm maker) {
        return new LearnedLimit(maker.limit(), OwnLimit.learned(maker.published(), maker.batches()));
    }

    boolean isWithin() {
        return learned.band().contains(truly);
    }

    boolean isSaid() {
        return learned.says() == OwnLimit.Says.LIMIT;
    }

    double widthKelvin() {
        return learned.band().widthKelvin();
    }

    double errorKelvin() {
        return Math.abs(learned.band().middleCelsius() - truly);
    }
}
