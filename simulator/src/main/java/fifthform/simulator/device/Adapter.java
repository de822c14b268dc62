package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.StandardNormal;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.SplittableRandom;

/**
 * One adapter: measures, rounds, and talks unasked to whoever listens. Guarded by the {@link RunningKitchen} it belongs
 * to.
 */
final class Adapter {
    private final String place;
    private final AdapterSettings settings;
    private final Instant startsAt;
    private final SplittableRandom noise;
    private final SplittableRandom garbage;
    private final Queue<Arrival> sent = new ArrayDeque<>();
    private Instant nextLineAt;
    private Optional<Trouble> trouble = Optional.empty();
    private OptionalDouble shownCelsius = OptionalDouble.empty();
    private int timesUnplugged;

    Adapter(String place, AdapterSettings settings, Instant startsAt, SplittableRandom random) {
        this.place = place;
        this.settings = settings;
        this.startsAt = startsAt;
        noise = random.split();
        garbage = random.split();
        nextLineAt = startsAt.plus(settings.interval());
    }

    String place() {
        return place;
    }

    /** The last number it sent. */
    OptionalDouble shownCelsius() {
        return shownCelsius;
    }

    boolean unplugged() {
        return trouble.equals(Optional.of(Trouble.UNPLUGGED));
    }

    /** Grows with each unplugging: a line opened before is dead after. */
    int timesUnplugged() {
        return timesUnplugged;
    }

    /** The oldest line nobody has read yet. */
    Optional<Arrival> poll() {
        return Optional.ofNullable(sent.poll());
    }

    boolean hasLine() {
        return !sent.isEmpty();
    }

    /** Somebody begins to listen: what was said to nobody is gone. */
    void listen() {
        sent.clear();
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
        if (at.isBefore(nextLineAt)) return;
        nextLineAt = nextLineAt.plus(settings.interval());
        double readCelsius = tipCelsius + settings.offsetKelvin() + settings.noiseKelvin() * StandardNormal.draw(noise);
        BigDecimal number = LineText.rounded(readCelsius, settings.resolutionKelvin());
        if (trouble.isEmpty()) {
            shownCelsius = OptionalDouble.of(number.doubleValue());
            send(at, LineText.measured(number));
        } else {
            complain(at, trouble.get());
        }
    }

    private void complain(Instant at, Trouble present) {
        switch (present) {
            case OPEN_CIRCUIT -> send(at, LineText.openCircuit());
            case GARBAGE -> send(at, LineText.garbage(garbage));
            case SILENT, UNPLUGGED -> {
                // nothing comes
            }
        }
    }

    private void send(Instant at, byte[] bytes) {
        sent.add(new Arrival(at, bytes));
    }

    private void unplug() {
        timesUnplugged++;
        sent.clear();
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
