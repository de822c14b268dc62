package fifthform.monitor.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.Side;
import fifthform.monitor.sound.Call.Kind;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Tones against the design's table of sounds, and against IEC 60601-1-8 as a sounder maker's page quotes it. */
class TonesTest {
    private static final int WINDOW = 2048;

    static Call[] calls() {
        return Tones.all();
    }

    /** Pulses × length, and the distance of their starts, as the table has them. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void lengthOfTheWhole(Kind kind) {
        double seconds = switch (kind) {
            case URGENT -> 3 / 6.0 + 0.090;
            case PROMPT -> 2 / 2.5 + 0.150;
            case ADVISE -> 0.250;
            case CUE -> 1 + 0.180;
        };
        assertEquals(seconds * 44_100, samples(new Call(kind, Side.NEITHER)).length, 3);
    }

    @ParameterizedTest
    @MethodSource("calls")
    void neverClipsAndNeverClicks(Call call) {
        double[] samples = samples(call);
        double peak = Arrays.stream(samples).map(Math::abs).max().orElse(0);
        double wanted = 0.8 * Math.pow(10, decibels(call.kind()) / 20);
        assertEquals(wanted, peak, wanted * 0.06, "peak of " + call);
        int pulse = samples(new Call(call.kind(), Side.NEITHER)).length;
        assertTrue(Math.abs(samples[0]) < 1e-3 && Math.abs(samples[samples.length - 1]) < 1e-3, call.toString());
        assertTrue(pulse > 0);
    }

    /** At 5 ms of a 15 ms raised cosine the level is a quarter; at 15 ms it is whole. */
    @Test
    void risesWithinFifteenMilliseconds() {
        double[] samples = samples(Call.of(fifthform.curves.alarm.Priority.URGENT, Side.NEITHER));
        assertEquals(0.25 * 0.8, peak(samples, 0.0043, 0.0057), 0.08);
        assertEquals(0.8, peak(samples, 0.015, 0.0175), 0.02);
    }

    @ParameterizedTest
    @MethodSource("calls")
    void fundamentalAndHarmonics(Call call) {
        for (int pulse = 0; pulse < call.kind().pulses(); pulse++) {
            double[] window = window(call, pulse);
            double expected = Tones.hertz(call, pulse, 0.5);
            double[] level = new double[5];
            for (int k = 1; k <= 5; k++) level[k - 1] = level(window, k * expected);
            assertTrue(expected >= 150 && expected <= 1000, "fundamental " + expected);
            int heard = 0;
            for (int k = 1; k <= 5; k++) {
                boolean inBand = k * expected >= 300 && k * expected <= 4000;
                if (inBand && Math.abs(20 * Math.log10(level[k - 1] / level[0])) <= 15) heard++;
            }
            assertTrue(
                    heard >= 4,
                    String.format(
                            Locale.ROOT, "%s pulse %d: %d partials of %s", call, pulse, heard, Arrays.toString(level)));
            assertTrue(level(window, expected * 1.5) < level[0] / 5, "something between the partials of " + call);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"URGENT", "PROMPT"})
    void contourTellsTheSide(Kind kind) {
        int last = kind.pulses() - 1;
        assertTrue(strongest(new Call(kind, Side.TOO_HOT), last) > strongest(new Call(kind, Side.TOO_HOT), 0) + 100);
        assertTrue(strongest(new Call(kind, Side.TOO_COLD), last) < strongest(new Call(kind, Side.TOO_COLD), 0) - 100);
        assertEquals(780, strongest(new Call(kind, Side.NEITHER), last), 25);
        assertEquals(780, strongest(new Call(kind, Side.NEITHER), 0), 25);
    }

    @Test
    void theCueHasTwoNotes() {
        assertEquals(620, strongest(Call.CUE, 0), 25);
        assertEquals(780, strongest(Call.CUE, 1), 25);
    }

    private static double decibels(Kind kind) {
        return switch (kind) {
            case URGENT, PROMPT -> 0;
            case ADVISE -> -6;
            case CUE -> -9;
        };
    }

    private static double[] samples(Call call) {
        byte[] bytes = Tones.pcm(call, 0);
        double[] samples = new double[bytes.length / 2];
        for (int i = 0; i < samples.length; i++)
            samples[i] = ((bytes[2 * i + 1] << 8) | (bytes[2 * i] & 0xFF)) / (double) Short.MAX_VALUE;
        return samples;
    }

    private static double peak(double[] samples, double fromSeconds, double toSeconds) {
        return Arrays.stream(samples, (int) (fromSeconds * 44_100), (int) (toSeconds * 44_100))
                .map(Math::abs)
                .max()
                .orElse(0);
    }

    /** The middle of a pulse under a Hann window. */
    private static double[] window(Call call, int pulse) {
        double[] samples = samples(call);
        int length = (int) Math.round(call.kind().pulseMillis() * 44.1);
        int start = (int) Math.round(pulse * 44_100 / call.kind().pulsesPerSecond()) + (length - WINDOW) / 2;
        double[] window = new double[WINDOW];
        for (int i = 0; i < WINDOW; i++)
            window[i] = samples[start + i] * (0.5 - 0.5 * Math.cos(2 * Math.PI * i / WINDOW));
        return window;
    }

    /** Highest magnitude within ±2 bins and the glide of {@code hertz}. */
    private static double level(double[] window, double hertz) {
        Complex[] spectrum = spectrum(window);
        int bin = (int) Math.round(hertz * WINDOW / 44_100);
        double highest = 0;
        for (int i = bin - 3; i <= bin + 3; i++) highest = Math.max(highest, spectrum[i].abs());
        return highest;
    }

    private static double strongest(Call call, int pulse) {
        Complex[] spectrum = spectrum(window(call, pulse));
        int best = 1;
        for (int i = 1; i < WINDOW / 2; i++) if (spectrum[i].abs() > spectrum[best].abs()) best = i;
        return best * 44_100.0 / WINDOW;
    }

    private static Complex[] spectrum(double[] window) {
        return new FastFourierTransformer(DftNormalization.STANDARD).transform(window, TransformType.FORWARD);
    }
}
