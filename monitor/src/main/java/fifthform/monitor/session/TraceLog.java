package fifthform.monitor.session;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Spoken;
import fifthform.curves.engine.Event;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The curve so far, grown by the session's thread alone. What is handed out is a view of a fixed length over arrays that
 * are only ever appended to, so the screen's thread may read it without a lock once it has been published.
 */
final class TraceLog {
    /** Closer points cannot be told apart on any screen; a day of them takes under 3 MB. */
    private static final Duration SPACING = Duration.ofMillis(500);

    private static final Duration GAP = Duration.ofSeconds(5);

    private long[] epochMillis = new long[4096];
    private double[] celsius = new double[4096];
    private int size;
    private List<TraceView.Flag> flags = List.of();
    private List<TraceView.Gap> gaps = List.of();

    /** One entry a change of the word, however often it was read; a word holds for ten seconds at least. */
    private List<TraceView.SeedTurn> seed = List.of();

    private List<Event.SeedLost> losses = List.of();

    void add(Instant at, double pointCelsius) {
        if (size > 0) {
            Instant last = Instant.ofEpochMilli(epochMillis[size - 1]);
            if (at.isBefore(last.plus(SPACING))) return;
            if (at.isAfter(last.plus(GAP))) gaps = appended(gaps, new TraceView.Gap(last, at));
        }
        if (size == epochMillis.length) {
            epochMillis = Arrays.copyOf(epochMillis, 2 * size);
            celsius = Arrays.copyOf(celsius, 2 * size);
        }
        epochMillis[size] = at.toEpochMilli();
        celsius[size] = pointCelsius;
        size++;
    }

    void flag(Instant at, String word) {
        flags = appended(flags, new TraceView.Flag(at, word));
    }

    /** What is said of the crystals at this moment. */
    void crystals(Instant at, Spoken spoken) {
        Optional<SeedWord> word = spoken.word();
        Optional<TraceView.SeedTurn> last = seed.isEmpty() ? Optional.empty() : Optional.of(seed.get(seed.size() - 1));
        boolean asBefore = last.map(l -> l.word().equals(word) && l.thick() == spoken.thick())
                .orElse(word.isEmpty());
        if (!asBefore) seed = appended(seed, new TraceView.SeedTurn(at, word, spoken.thick()));
    }

    void lost(Event.SeedLost event) {
        losses = appended(losses, event);
    }

    TraceView view() {
        return new TraceView(epochMillis, celsius, size, flags, gaps, seed, losses);
    }

    private static <T> List<T> appended(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list);
        longer.add(item);
        return List.copyOf(longer);
    }
}
