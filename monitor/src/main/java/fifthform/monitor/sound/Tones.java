package fifthform.monitor.sound;

import fifthform.curves.alarm.Side;
import fifthform.monitor.sound.Call.Kind;

/**
 * Sounds as numbers: 44.1 kHz, 16 bit, one channel, least byte first.
 *
 * <p>Each note has a fundamental of 620 to 1000 Hz and four more partials no more than 12 dB weaker, so that at least
 * four lie within 300 to 4000 Hz and one is heard even where a fan covers another. Basis: IEC 60601-1-8 as described
 * by a sounder maker's public page, fundamental 150–1000 Hz and at least four harmonics in 300–4000 Hz within ±15 dB;
 * the values are our own choice within it. No medical melody is used.
 */
public final class Tones {
    public static final int SAMPLES_PER_SECOND = 44_100;

    static final double LOW_HERTZ = 620;
    static final double LEVEL_HERTZ = 780;
    static final double HIGH_HERTZ = 1000;

    /** Against clicks and startle; our own choice. */
    static final int RISE_MILLIS = 15;

    /** Share of full scale that the loudest sound may reach; our own choice. */
    static final double PEAK = 0.8;

    /** Amplitudes of partials 1 to 5; 0.25 is −12 dB. */
    private static final double[] PARTIALS = {1, 0.7, 0.5, 0.35, 0.25};

    private Tones() {}

    /**
     * Samples of {@code call}, from the start of its first pulse to the end of its last.
     *
     * @param volume level against the loudest, dB; 0 or less
     */
    public static byte[] pcm(Call call, double volume) {
        Kind kind = call.kind();
        int pulse = samples(kind.pulseMillis() / 1000.0);
        int period = samples(1 / kind.pulsesPerSecond());
        byte[] bytes = new byte[2 * ((kind.pulses() - 1) * period + pulse)];
        for (int i = 0; i < kind.pulses(); i++) pulse(call, i, volume, bytes, i * period, pulse);
        return bytes;
    }

    /** Fundamental at {@code share} of the sounding time, 0 to 1, in pulse {@code pulse}; Hz. */
    static double hertz(Call call, int pulse, double share) {
        if (call.kind() == Kind.CUE) return pulse == 0 ? LOW_HERTZ : LEVEL_HERTZ;
        double along = (pulse + share) / call.kind().pulses();
        return switch (call.side()) {
            case TOO_HOT -> LOW_HERTZ * Math.pow(HIGH_HERTZ / LOW_HERTZ, along);
            case TOO_COLD -> HIGH_HERTZ * Math.pow(LOW_HERTZ / HIGH_HERTZ, along);
            case NEITHER -> LEVEL_HERTZ;
        };
    }

    private static void pulse(Call call, int pulse, double volume, byte[] bytes, int from, int length) {
        double loudness = PEAK * Math.pow(10, (call.kind().decibels() + volume) / 20) / crest();
        double turns = 0;
        for (int i = 0; i < length; i++) {
            turns += hertz(call, pulse, i / (double) length) / SAMPLES_PER_SECOND;
            double value = 0;
            for (int k = 0; k < PARTIALS.length; k++) value += PARTIALS[k] * Math.sin(2 * Math.PI * (k + 1) * turns);
            int sample = (int) Math.round(value * loudness * envelope(i, length) * Short.MAX_VALUE);
            bytes[2 * (from + i)] = (byte) sample;
            bytes[2 * (from + i) + 1] = (byte) (sample >> 8);
        }
    }

    /** Raised cosine at both ends: 0 at the very edge, 1 after the rise. */
    private static double envelope(int sample, int length) {
        int rise = samples(RISE_MILLIS / 1000.0);
        int edge = Math.min(sample, length - 1 - sample);
        return edge >= rise ? 1 : 0.5 - 0.5 * Math.cos(Math.PI * edge / rise);
    }

    /** Highest value of one period of the sum of partials. */
    private static double crest() {
        double highest = 0;
        for (int i = 0; i < 2000; i++) {
            double value = 0;
            for (int k = 0; k < PARTIALS.length; k++) value += PARTIALS[k] * Math.sin(2 * Math.PI * (k + 1) * i / 2000);
            highest = Math.max(highest, Math.abs(value));
        }
        return highest;
    }

    private static int samples(double seconds) {
        return (int) Math.round(seconds * SAMPLES_PER_SECOND);
    }

    /** All sounds there are, made ahead so that none has to be worked out when it counts. */
    static Call[] all() {
        Kind[] kinds = Kind.values();
        Side[] sides = Side.values();
        Call[] calls = new Call[kinds.length * sides.length];
        for (int i = 0; i < calls.length; i++) calls[i] = new Call(kinds[i / sides.length], sides[i % sides.length]);
        return calls;
    }
}
