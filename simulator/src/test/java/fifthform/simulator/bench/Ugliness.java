package fifthform.simulator.bench;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.simulator.bowl.ProbePlace;
import java.time.Duration;

/** What can be ugly about readings although the kitchen goes on as ever. Episodes come every ninety seconds. */
enum Ugliness {
    NONE,
    /** The tip in the air for ten seconds, and nobody says so. */
    OUT_FOR_10_S {
        @Override
        ProbePlace place(long step, ProbePlace honest) {
            return inEpisode(step, 20) ? ProbePlace.OUT : honest;
        }

        @Override
        boolean begins(long step) {
            return step % PERIOD_STEPS == 0;
        }
    },
    AT_WALL_FOR_25_S {
        @Override
        ProbePlace place(long step, ProbePlace honest) {
            return inEpisode(step, 50) ? ProbePlace.AT_WALL : honest;
        }

        @Override
        boolean begins(long step) {
            return step % PERIOD_STEPS == 0;
        }
    },
    QUARTER_STEPS {
        @Override
        Input heard(Sample sample, long step) {
            return reading(sample, Math.round(sample.tipCelsius() * 4) / 4.0, 0.25 / Math.sqrt(12));
        }
    },
    ONE_IN_FIVE_LOST {
        @Override
        Input heard(Sample sample, long step) {
            return step % 5 == 0 ? new Tick(sample.at()) : sample;
        }
    },
    SPIKE_A_MINUTE {
        @Override
        Input heard(Sample sample, long step) {
            return step % 120 == 0 ? reading(sample, sample.tipCelsius() + spike(step), sample.sigmaKelvin()) : sample;
        }

        /** From one kelvin to thirty, up and down. */
        private double spike(long step) {
            double[] kelvin = {25, 3, -8, 1.5, -25, 30, 2, -4, 6, -2};
            return kelvin[(int) (step / 120 % kelvin.length)];
        }
    },
    FAHRENHEIT {
        @Override
        Input heard(Sample sample, long step) {
            return fahrenheit(sample);
        }
    },
    /** From the eighth minute on, as by a knee on the device's button. */
    TURNS_FAHRENHEIT {
        @Override
        Input heard(Sample sample, long step) {
            return step >= SWITCH_STEP ? fahrenheit(sample) : sample;
        }

        @Override
        boolean begins(long step) {
            return step == SWITCH_STEP;
        }
    },
    ZEROS_AT_FIRST {
        @Override
        Input heard(Sample sample, long step) {
            return step < 12 ? reading(sample, 0, sample.sigmaKelvin()) : sample;
        }
    },
    ONE_OUT_OF_RANGE_A_MINUTE {
        @Override
        Input heard(Sample sample, long step) {
            return step % 120 == 0 ? new ProbeFault(sample.at(), sample.probe(), Cause.OUT_OF_RANGE) : sample;
        }
    };

    static final long PERIOD_STEPS = 180;
    static final long SWITCH_STEP = 16 * 60;

    /** How long after its beginning an episode counts as one. */
    static final Duration EPISODE = Duration.ofSeconds(25);

    ProbePlace place(long step, ProbePlace honest) {
        return honest;
    }

    Input heard(Sample sample, long step) {
        return sample;
    }

    /** Whether an episode that should be noticed begins here. */
    boolean begins(long step) {
        return false;
    }

    static boolean inEpisode(long step, long steps) {
        return step > PERIOD_STEPS && step % PERIOD_STEPS < steps;
    }

    private static Sample fahrenheit(Sample sample) {
        double shown = 1.8 * sample.tipCelsius() + 32;
        double rounded = Math.round(shown * 10) / 10.0;
        return reading(sample, Math.min(Sample.HIGHEST_CELSIUS, rounded), sample.sigmaKelvin());
    }

    private static Sample reading(Sample sample, double celsius, double sigmaKelvin) {
        return new Sample(
                sample.at(), sample.probe(), celsius, sigmaKelvin, sample.junctionCelsius(), sample.emfMillivolts());
    }
}
