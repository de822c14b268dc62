package fifthform.monitor.app;

import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Sensor;
import fifthform.monitor.intake.PacedSource;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.texts.CommandText;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.device.QuietPlace;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Invented places for trying {@code set} and {@code store}. */
final class QuietSubjects {
    /** Any number gives a practice; this one always the same. */
    private static final long LUCK = 11;

    private QuietSubjects() {}

    /**
     * The place that is meant.
     *
     * @param name {@code practice} or {@code practice:PLACE}
     * @param places those that fit the command, the usual one first
     * @param speed so many times as fast as life; as fast as it can where empty
     */
    static CheckSubject practice(String name, List<QuietPlace.Place> places, Optional<Double> speed) throws Refusal {
        String word = name.equals(ProbeChooser.PRACTICE)
                ? places.get(0).word()
                : name.substring(ProbeChooser.PRACTICE.length() + 1);
        QuietPlace.Place place = places.stream()
                .filter(p -> p.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        Exit.NOT_UNDERSTOOD,
                        CommandText.THERE_IS_NO_PRACTICE_PLACE.say(
                                word,
                                places.stream().map(p -> "practice:" + p.word()).collect(Collectors.joining(", ")))));
        Instant start = Instant.now();
        LinkSource bytes = new QuietPlace(place, start, new SplittableRandom(LUCK)).source();
        LinkSource source = speed.isPresent()
                ? new PacedSource(bytes, new SessionClock(start, speed.get(), System::nanoTime))
                : bytes;
        return new CheckSubject(
                CheckSubject.Kind.PRACTICE,
                name,
                source,
                Protocols.named(Protocols.TEXT),
                Optional.empty(),
                OptionalInt.empty(),
                Sensor.UNKNOWN,
                Optional.empty(),
                Correction.UNCHECKED,
                target -> {},
                () -> {});
    }
}
