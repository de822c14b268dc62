package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Frames as bare bytes, with or without a mark before each. Where a frame begins is won from the frames themselves. Of all
 * places where one could begin, one must have shown {@link #enough} frames in a row that are temperatures of a kitchen and
 * follow each other without a leap; meanwhile every other place must have been refuted twice, by bits that the chip never
 * sends or by a leap: a misplaced frame takes the last bits of a number for the first of another, and so leaps as soon as
 * anything moves. A stream that stands still to the last bit can stay undecided, and then it is unreadable.
 *
 * <p>In step, a frame that is impossible or leaps loses the step, and it is won anew. A lost byte can show one frame later
 * only, so a frame is held until {@link #hold} more have followed. What no one can notice is a byte that became another
 * one: these streams have no check sum.
 */
final class BinaryFrameDecoder implements ProbeProtocol.Decoder {
    /** A mark of two bytes is chance once in 65 536. */
    private static final int ENOUGH_MARKED = 2;

    private static final int ENOUGH_UNMARKED = 8;
    private static final int HOLD_MARKED = 1;
    private static final int HOLD_UNMARKED = 3;

    /** Refutations that rule a place out; one alone may be a spoiled byte. */
    private static final int REFUTED = 2;

    /** Thin tips in boiling water, at a few readings a second, move by less between two of them. */
    private static final double TIP_LEAP_KELVIN = 10;

    /** A circuit board moves by far less (common practice, no source). */
    private static final double JUNCTION_LEAP_KELVIN = 0.5;

    private final Chip chip;
    private final byte[] mark;
    private final int size;
    private final int enough;
    private final int hold;
    private final ChipJudge judge;

    /** The last bytes, a ring: what has not been told is at its end. */
    private final byte[] window;

    private int untold;
    private long received;

    /**
     * For each place modulo the frame's size: frames in a row that were good; how often it was refuted; frames in a row
     * that did not refute it, of which {@link #enough} make up for all that did.
     */
    private final int[] good;

    private final int[] refuted;
    private final int[] clean;

    /** The frame before at each place; {@link #NOTHING} where that was impossible or unknown. */
    private final ChipReading[] before;

    private int step = OUT_OF_STEP;
    private static final int OUT_OF_STEP = -1;

    /** Anything may follow it. */
    private static final ChipReading NOTHING =
            new ChipReading(ChipReading.State.OUT_OF_RANGE, 0, OptionalDouble.empty(), 1);

    BinaryFrameDecoder(Chip chip, byte[] mark) {
        this.chip = chip;
        this.mark = mark.clone();
        this.size = mark.length + chip.frameBytes();
        this.enough = mark.length >= 2 ? ENOUGH_MARKED : ENOUGH_UNMARKED;
        this.hold = mark.length >= 2 ? HOLD_MARKED : HOLD_UNMARKED;
        this.judge = new ChipJudge(chip);
        this.window = new byte[(enough + 1) * size];
        this.good = new int[size];
        this.refuted = new int[size];
        this.clean = new int[size];
        this.before = new ChipReading[size];
        Arrays.fill(before, NOTHING);
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        for (byte b : bytes) take(b, out);
    }

    private void take(byte b, Consumer<? super Signal> out) {
        if (untold == window.length) tellUnreadable(1, out);
        window[(int) (received % window.length)] = b;
        received++;
        untold++;
        if (received < size) return;
        int place = (int) (received % size);
        if (step == OUT_OF_STEP) seek(place, out);
        else if (place == step) inStep(place, out);
    }

    private void seek(int place, Consumer<? super Signal> out) {
        judgePlace(place);
        if (good[place] < enough || good[place] * size > untold) return;
        for (int other = 0; other < size; other++) if (other != place && refuted[other] < REFUTED) return;
        step = place;
        // Without a mark the first of them can be pieced together from both sides of a lost or added byte.
        int frames = mark.length >= 2 ? good[place] : good[place] - 1;
        tellUnreadable(untold - frames * size, out);
        for (int i = frames; i > hold; i--) tell(received - (long) (i - 1) * size, out);
    }

    /** Counts for the frame that has just ended at {@code place}. */
    private void judgePlace(int place) {
        Optional<ChipReading> reading = reading(received);
        boolean follows = reading.isPresent() && follows(before[place], reading.get());
        if (!follows) refuted[place] = Math.min(REFUTED, refuted[place] + 1);
        clean[place] = follows ? clean[place] + 1 : 0;
        if (clean[place] >= enough) refuted[place] = 0;
        boolean isGood = reading.filter(ChipReading::isOfAKitchen).isPresent();
        good[place] = !isGood ? 0 : follows ? Math.min(good[place] + 1, enough) : 1;
        before[place] = reading.orElse(NOTHING);
    }

    private void inStep(int place, Consumer<? super Signal> out) {
        Optional<ChipReading> reading = reading(received);
        if (reading.isPresent() && follows(before[place], reading.get())) {
            if (reading.get().isTemperature()) before[place] = reading.get();
            tell(received - (long) hold * size, out);
            return;
        }
        step = OUT_OF_STEP;
        Arrays.fill(good, 0);
        Arrays.fill(refuted, 0);
        Arrays.fill(clean, 0);
        Arrays.fill(before, NOTHING);
    }

    private static boolean follows(ChipReading before, ChipReading reading) {
        boolean junctionLeaps = before.junctionCelsius().isPresent()
                && reading.junctionCelsius().isPresent()
                && Math.abs(before.junctionCelsius().getAsDouble()
                                - reading.junctionCelsius().getAsDouble())
                        > JUNCTION_LEAP_KELVIN;
        boolean tipLeaps = before.isTemperature()
                && reading.isTemperature()
                && Math.abs(before.tipCelsius() - reading.tipCelsius()) > TIP_LEAP_KELVIN;
        return !junctionLeaps && !tipLeaps;
    }

    private Optional<ChipReading> reading(long end) {
        for (int i = 0; i < mark.length; i++) if (at(end - size + i) != mark[i]) return Optional.empty();
        return chip.read(frame(end));
    }

    private long frame(long end) {
        long frame = 0;
        for (long i = end - chip.frameBytes(); i < end; i++) frame = frame << 8 | at(i) & 0xFF;
        return frame;
    }

    private byte at(long index) {
        return window[(int) (index % window.length)];
    }

    private void tell(long end, Consumer<? super Signal> out) {
        untold -= size;
        out.accept(judge.judge(0, frame(end)).orElseGet(() -> new Signal.Unreadable(size)));
    }

    private void tellUnreadable(int count, Consumer<? super Signal> out) {
        if (count <= 0) return;
        untold -= count;
        out.accept(new Signal.Unreadable(count));
    }
}
