package fifthform.simulator.bench;

import fifthform.curves.fault.Fault;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** What goes wrong with a batch or its bars, as a change of its kitchen or of what is done to the bars. */
enum Mishap {
    NONE(null),
    LATE_LIFT(Fault.OVERSHOT) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of(
                    "lift = one",
                    line("warm bath = %.1f C", 58, 66, luck),
                    line("interrupted = phone for %.0f s, 0 s after lift-now", 120, 240, luck));
        }
    },
    WORKED_HOT(Fault.OVERSHOT) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("maker = own-way", "hold = 8 min", line("warm at = %.2f C", 33.6, 35.5, luck));
        }
    },
    COOLED_WARM(Fault.COOLED_TOO_LITTLE) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("maker = own-way", line("cool at = %.2f C", 29.5, 30.8, luck), "hold = 1 min");
        }
    },
    HELD_SHORT(Fault.COOLED_TOO_LITTLE) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("maker = own-way", line("cool at = %.2f C", 28.6, 29.4, luck), "hold = 0.5 min");
        }
    },
    UNSTIRRED(Fault.NOT_STIRRED) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("begins = melted at 48 C", "stirring = 0 x");
        }
    },
    MILD_MELT(Fault.NOT_MELTED) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("maker = own-way", line("melted at = %.1f C", 37.5, 40, luck), "hold = 8 min");
        }
    },
    HELD_LONG(Fault.OVER_TEMPERED) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of(
                    "maker = own-way",
                    line("cool at = %.2f C", 25.5, 27, luck),
                    line("hold = %.1f min", 12, 25, luck),
                    "pour = 12 min");
        }
    },
    PROBE_READS_LOW(Fault.PROBE_WRONG) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of(line("offset = %.2f K", -3.4, -2.2, luck));
        }
    },
    SEED_MELTED(Fault.SEED_POOR) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of(
                    "maker = own-way",
                    "seed added = 40 g",
                    line("seed at = %.1f C", 36, 38, luck),
                    line("cool at = %.2f C", 30, 31, luck),
                    "hold = 1 min");
        }
    },
    SPLASH(Fault.WATER) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of("splash = 12 g", "lift = one", "pour = 6 min");
        }
    },
    BURNT_MELT(Fault.SCORCHED) {
        @Override
        List<String> lines(SplittableRandom luck) {
            return List.of(
                    "maker = own-way",
                    line("melted at = %.1f C", 57, 60, luck),
                    "hot bath held = 80 C",
                    "hot bath = 88 C");
        }
    },
    WARM_AND_THICK(Fault.CORE_HEAT),
    FREEZER(Fault.SHOCK_COOLED),
    OUT_EARLY(Fault.OUT_TOO_EARLY),
    COLD_MOULD(Fault.MOULD_COLD),
    ROUGH_MOULD(Fault.MOULD_DIRTY),
    OPENED_COLD(Fault.CONDENSATION),
    STORED_HOT(Fault.STORED_WARM),
    STORED_SWINGING(Fault.STORED_WARM),
    NUTS(Fault.OIL),
    YEAR_OLD(Fault.AGED),
    UNMIXED_PART(Fault.NOT_MIXED);

    private final Fault truth;

    Mishap(Fault truth) {
        this.truth = truth;
    }

    /** What an expert would call it; none of a sound batch. */
    Fault truth() {
        return truth;
    }

    /** Whether it happens to the bowl, and not to bars of a sound one. */
    boolean isOfTheBowl() {
        return this != NONE && ordinal() < WARM_AND_THICK.ordinal();
    }

    /** What it changes in the kitchen. */
    List<String> lines(SplittableRandom luck) {
        return List.of();
    }

    static String line(String format, double low, double high, SplittableRandom luck) {
        return String.format(Locale.ROOT, format, low + (high - low) * luck.nextDouble());
    }
}
