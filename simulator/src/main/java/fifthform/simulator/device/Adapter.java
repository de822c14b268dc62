package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.StandardNormal;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.SplittableRandom;

/**
 * One adapter: measures, rounds, and talks to whoever listens, unasked or asked, as its language has it. Guarded by the
 * {@link RunningKitchen} it belongs to.
 */
final class Adapter {
    /** Messages a tick, so that some sixty come a second; most serial lines can carry no more. */
    private static final int FLOOD_MESSAGES = 8;
    /** One reading in four is off by this or more, up to the other; a guess. */
    private static final int SPIKE_OF = 4;

    private static final double LEAST_SPIKE_KELVIN = 8;
    private static final double MOST_SPIKE_KELVIN = 20;

    private final String place;
    private final AdapterSettings settings;
    private final Instant startsAt;
    private final SplittableRandom noise;
    private final SplittableRandom mishap;
    private final Wire wire;
    private final Delivery delivery;
    private final Queue<Arrival> sent = new ArrayDeque<>();
    private final List<byte[]> answers = new ArrayList<>();
    private Optional<Ear> ear;
    private Instant nextReadingAt;
    private Optional<Trouble> trouble = Optional.empty();
    /** What it has to say now; empty before its first measurement. */
    private Optional<Said> said = Optional.empty();

    private OptionalDouble shownCelsius = OptionalDouble.empty();
    private int timesUnplugged;

    Adapter(String place, AdapterSettings settings, Instant startsAt, SplittableRandom random) {
        this.place = place;
        this.settings = settings;
        this.startsAt = startsAt;
        noise = random.split();
        mishap = random.split();
        wire = settings.wire();
        delivery = new Delivery(wire, mishap);
        ear = wire.newEar();
        nextReadingAt = startsAt.plus(settings.interval());
    }

    String place() {
        return place;
    }

    /** The last number it sent. */
    OptionalDouble shownCelsius() {
        return shownCelsius;
    }

    boolean unplugged() {
        return has(Trouble.UNPLUGGED);
    }

    private boolean has(Trouble one) {
        return trouble.equals(Optional.of(one));
    }

    /** Grows with each unplugging: a line opened before is dead after. */
    int timesUnplugged() {
        return timesUnplugged;
    }

    /** The oldest message nobody has read yet. */
    Optional<Arrival> poll() {
        return Optional.ofNullable(sent.poll());
    }

    boolean hasLine() {
        return !sent.isEmpty();
    }

    /** Somebody begins to listen: what was said to nobody is gone, and so are half-asked questions. */
    void listen() {
        sent.clear();
        answers.clear();
        ear = wire.newEar();
    }

    /** Somebody writes to it. Its answers go out at the next tick: it needs its time, too. */
    void hear(byte[] written) {
        if (said.isEmpty()) return;
        ear.ifPresent(listening -> answers.addAll(listening.hears(written, said.get())));
    }

    /**
     * Time goes on to {@code at}.
     *
     * @param firstAt when the bowl first stood at each spot
     */
    void tick(Instant at, double tipCelsius, Map<Spot, Instant> firstAt) {
        Optional<Trouble> now = troubleAt(at, firstAt);
        if (now.equals(Optional.of(Trouble.UNPLUGGED)) && !unplugged()) unplug();
        trouble = now;
        List<byte[]> asked = List.copyOf(answers);
        answers.clear();
        asked.forEach(answer -> deliver(at, answer));
        if (!at.isBefore(nextReadingAt)) {
            nextReadingAt = nextReadingAt.plus(settings.interval());
            double found = settings.findsCelsius(tipCelsius, Duration.between(startsAt, at));
            Said saying = saying(found + settings.noiseKelvin() * StandardNormal.draw(noise));
            said = Optional.of(saying);
            if (ear.isEmpty()) deliver(at, wire.unasked(saying));
        }
        if (has(Trouble.FLOOD)) said.ifPresent(saying -> flood(at, wire.unasked(saying)));
    }

    /** What it has to say of this reading. */
    private Said saying(double readCelsius) {
        if (trouble.isEmpty()) return wire.measured(readCelsius);
        return switch (trouble.get()) {
            case OPEN_CIRCUIT -> wire.openCircuit();
            case SHORT_CIRCUIT -> wire.shortCircuit();
            case DEAD_LINE -> wire.dead();
            case STUCK -> said.orElseGet(() -> wire.measured(readCelsius));
            case SPIKES -> wire.measured(readCelsius + spikeKelvin());
            case UNPLUGGED, SILENT, GARBAGE, DROP_OUTS, HALF_LINES, FLOOD, WRONG_CRC -> wire.measured(readCelsius);
        };
    }

    private double spikeKelvin() {
        if (mishap.nextInt(SPIKE_OF) != 0) return 0;
        double size = LEAST_SPIKE_KELVIN + (MOST_SPIKE_KELVIN - LEAST_SPIKE_KELVIN) * mishap.nextDouble();
        return mishap.nextBoolean() ? size : -size;
    }

    private void deliver(Instant at, byte[] message) {
        Optional<byte[]> arriving = trouble.isEmpty() ? Optional.of(message) : delivery.of(message, trouble.get());
        arriving.ifPresent(bytes -> sent.add(new Arrival(at, bytes)));
        boolean whole = arriving.filter(bytes -> bytes == message).isPresent();
        OptionalDouble number = said.map(Said::celsius).orElse(OptionalDouble.empty());
        if (whole && number.isPresent()) shownCelsius = number;
    }

    private void flood(Instant at, byte[] message) {
        ByteArrayOutputStream messages = new ByteArrayOutputStream();
        for (int i = 0; i < FLOOD_MESSAGES; i++) messages.writeBytes(message);
        sent.add(new Arrival(at, messages.toByteArray()));
    }

    private void unplug() {
        timesUnplugged++;
        sent.clear();
        answers.clear();
    }

    private Optional<Trouble> troubleAt(Instant at, Map<Spot, Instant> firstAt) {
        for (PlannedFault fault : settings.faults()) {
            Optional<Instant> counted = fault.sinceFirst().isEmpty()
                    ? Optional.of(startsAt)
                    : Optional.ofNullable(firstAt.get(fault.sinceFirst().get()));
            if (counted.isEmpty()) continue;
            Instant from = counted.get().plus(fault.after());
            if (!at.isBefore(from) && at.isBefore(from.plus(fault.lasting()))) return Optional.of(fault.trouble());
        }
        return Optional.empty();
    }
}
