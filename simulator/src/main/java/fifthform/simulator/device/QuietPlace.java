package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * An invented place in which bars set or are kept, with a probe in it that is heard through the bytes of a real adapter.
 * Time goes on only when its line is read. Courses are invented.
 */
public final class QuietPlace {
    /** Which place. */
    public enum Place {
        /** Moulds in a home fridge, taken out after 18 min. */
        FRIDGE(40, m -> m < 18 ? 9.5 + 12 * StrictMath.exp(-m / 3) : 21.5 - 11.5 * StrictMath.exp(-(m - 18) / 3)),
        /** A cool cupboard. */
        COOL(150, m -> 14.5 + 8 * StrictMath.exp(-m / 4) + 0.2 * StrictMath.sin(m / 7)),
        /** A warm room: nothing sets well in it. */
        WARM_ROOM(90, m -> 25.5 + 0.3 * StrictMath.sin(m / 9)),
        FREEZER(20, m -> -12 + 34 * StrictMath.exp(-m / 3)),
        /** A store as it should be, over four days. */
        CUPBOARD(4 * 1440, m -> 17 + 0.7 * StrictMath.sin(m / 1440 * 2 * Math.PI)),
        /** A store on the three hot days of a summer. */
        SUMMER(4 * 1440, m -> 19.5 + m / 1440 * 1.1 + 2.1 * StrictMath.sin((m / 1440 - 0.3) * 2 * Math.PI));

        private final double minutes;
        private final DoubleUnaryOperator celsiusByMinute;

        Place(double minutes, DoubleUnaryOperator celsiusByMinute) {
            this.minutes = minutes;
            this.celsiusByMinute = celsiusByMinute;
        }

        /** The word after {@code practice:}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The place with this word. */
        public static Optional<Place> named(String word) {
            return Stream.of(values()).filter(p -> p.word().equals(word)).findFirst();
        }
    }

    private static final double LAG_SECONDS = 40;
    private static final double STEP_SECONDS = 10;

    private final Place place;
    private final Instant startsAt;
    private final Adapter adapter;
    private Instant now;
    private double tipCelsius;

    /** The adapter speaks in text lines, every ten seconds. */
    public QuietPlace(Place place, Instant startsAt, SplittableRandom random) {
        this.place = Objects.requireNonNull(place, "place");
        this.startsAt = Objects.requireNonNull(startsAt, "startsAt");
        this.now = startsAt;
        this.tipCelsius = place.celsiusByMinute.applyAsDouble(0);
        AdapterSettings settings =
                new AdapterSettings(Language.TEXT_LINES, 0.01, 0.03, 1, 0.1, 0, 22, Duration.ofSeconds(10), List.of());
        this.adapter = new Adapter("practice " + place.word(), settings, startsAt, random.split());
    }

    /** Where the probe is plugged in; its line ends when the place has nothing more to show. */
    public LinkSource source() {
        LinkSource line = SingleLine.source(adapter, this::tick);
        return new LinkSource() {
            @Override
            public String place() {
                return line.place();
            }

            @Override
            public ByteLink open() throws LinkException {
                ByteLink open = line.open();
                return new ByteLink() {
                    @Override
                    public Optional<Arrival> read() throws LinkException, InterruptedException {
                        return minutes() >= place.minutes ? Optional.empty() : open.read();
                    }

                    @Override
                    public void write(byte[] bytes) throws LinkException {
                        open.write(bytes);
                    }

                    @Override
                    public void close() {
                        open.close();
                    }
                };
            }
        };
    }

    private double minutes() {
        return Duration.between(startsAt, now).toMillis() / 60_000.0;
    }

    private Arrival tick() {
        for (double s = 0; s < STEP_SECONDS; s += RunningKitchen.TICK.toNanos() / 1e9) {
            now = now.plus(RunningKitchen.TICK);
            double air = place.celsiusByMinute.applyAsDouble(minutes());
            double seconds = RunningKitchen.TICK.toNanos() / 1e9;
            tipCelsius = air + (tipCelsius - air) * StrictMath.exp(-seconds / LAG_SECONDS);
            adapter.tick(now, tipCelsius, Map.of());
        }
        return adapter.poll().orElse(Arrival.silence(now));
    }
}
