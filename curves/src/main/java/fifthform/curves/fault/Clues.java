package fifthform.curves.fault;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.curves.setting.SetRecord;
import fifthform.curves.setting.StoreRecord;
import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of a batch and its bars; what is not among them, nobody knows.
 *
 * @param known each clue that is known, and whether it is so
 * @param looked whether anybody looked at the bars
 * @param grows whether something grows on them
 */
public record Clues(Map<Clue, Boolean> known, boolean looked, boolean grows) {
    /** Marks of lost temper come within these days; what comes later has other causes. As the outcome has it. */
    private static final double LATE_HOURS = 72;

    /** So old they are well set, and their snap counts. */
    private static final double SET_HOURS = 12;

    private static final double MONTHS_HOURS = 120 * 24;

    /** A warm store for less did nothing. Own choice. */
    private static final Duration WARM_FOR = Duration.ofMinutes(30);

    public Clues {
        EnumMap<Clue, Boolean> copy = new EnumMap<>(Clue.class);
        copy.putAll(known);
        known = Collections.unmodifiableMap(copy);
    }

    /** Nothing is known. */
    public static Clues none() {
        return new Clues(new EnumMap<>(Clue.class), false, false);
    }

    /** These and one more. */
    public Clues with(Clue clue, boolean there) {
        EnumMap<Clue, Boolean> more = new EnumMap<>(Clue.class);
        more.putAll(known);
        more.put(clue, there);
        return new Clues(more, looked, grows);
    }

    /** These and what was seen on the bars; looks in the order of their age. */
    public Clues seen(List<BarLook> looks) {
        if (looks.isEmpty()) return this;
        Clues here = new Clues(
                known, true, grows || looks.stream().anyMatch(l -> l.bloom().contains(Bloom.FUZZY)));
        here = here.bloomed(looks);
        for (BarLook look : looks) here = here.felt(look);
        for (BarLook look : looks) here = here.keptSo(look);
        double oldest = looks.stream().mapToDouble(BarLook::ageHours).max().orElse(0);
        return here.with(Clue.MONTHS_OLD, oldest > MONTHS_HOURS);
    }

    private Clues bloomed(List<BarLook> looks) {
        List<BarLook> of = looks.stream().filter(l -> !l.bloom().isEmpty()).toList();
        if (of.isEmpty()) return this;
        Clues here = this;
        List<BarLook> marked = of.stream().filter(Clues::hasPattern).toList();
        here = here.with(Clue.PATTERN, !marked.isEmpty());
        here = here.with(Clue.SUGAR, of.stream().anyMatch(l -> l.bloom().contains(Bloom.SUGAR)));
        here = here.with(Clue.OILY, of.stream().anyMatch(l -> l.bloom().contains(Bloom.OILY)));
        if (marked.isEmpty()) return here;
        double first = marked.stream().mapToDouble(BarLook::ageHours).min().orElseThrow();
        boolean cleanBefore = of.stream().anyMatch(l -> !hasPattern(l) && l.ageHours() >= 18 && l.ageHours() < first);
        // A first look that comes late says nothing of when the marks came.
        if (first <= LATE_HOURS || cleanBefore) here = here.with(Clue.PATTERN_LATE, first > LATE_HOURS);
        List<BarPlace> places =
                marked.stream().flatMap(l -> l.places().stream()).distinct().toList();
        if (places.isEmpty()) return here;
        here = here.with(Clue.PATTERN_THICK_PART, only(places, BarPlace.THICK_PART));
        here = here.with(Clue.PATTERN_FEW_BARS, only(places, BarPlace.FEW_BARS));
        here = here.with(Clue.PATTERN_MOULD_SIDE, only(places, BarPlace.MOULD_SIDE));
        return here.with(Clue.PATTERN_PIECES, only(places, BarPlace.OVER_PIECES));
    }

    private static boolean hasPattern(BarLook look) {
        return look.bloom().contains(Bloom.VEIL)
                || look.bloom().contains(Bloom.STREAKS)
                || look.bloom().contains(Bloom.BLOTCHES);
    }

    private static boolean only(List<BarPlace> places, BarPlace place) {
        return places.stream().allMatch(place::equals);
    }

    private Clues felt(BarLook look) {
        Clues here = this;
        if (look.snap().isPresent() && look.ageHours() >= SET_HOURS) {
            here = here.ever(Clue.SOFT, look.snap().get() != Snap.CLEAN);
            here = here.ever(Clue.BENDS, look.snap().get() == Snap.BENDS);
        }
        if (look.gloss().isPresent()) here = here.ever(Clue.DULL, look.gloss().get() == Gloss.DULL);
        if (look.release().isPresent()) {
            here = here.ever(Clue.STUCK, look.release().get() == Release.STUCK);
            here = here.ever(Clue.SOME_STUCK, look.release().get() == Release.SOME_STUCK);
        }
        return here;
    }

    private Clues keptSo(BarLook look) {
        if (look.kept().isEmpty()) return this;
        Kept kept = look.kept().get();
        return ever(Clue.SAID_STORED_WARM, kept == Kept.WARM || kept == Kept.SWINGS);
    }

    /** What was seen once was there. */
    private Clues ever(Clue clue, boolean there) {
        return with(clue, there || known.getOrDefault(clue, false));
    }

    /** These and what the log of the setting says. */
    public Clues set(Optional<SetRecord> record) {
        if (record.isEmpty()) return this;
        SetRecord set = record.get();
        Clues here = with(Clue.SET_WARM, set.warm().compareTo(Duration.ofMinutes(15)) >= 0);
        boolean cold = set.coldestEarlyCelsius().orElse(20) < 8;
        here = here.with(Clue.SET_SHOCK, cold || set.fastestKelvinPerMinute() > 3);
        Optional<Boolean> wet = set.cameOutWet();
        return wet.isPresent() ? here.with(Clue.SET_WET, wet.get()) : here;
    }

    /** These and what the log of the store says. */
    public Clues stored(Optional<StoreRecord> record) {
        if (record.isEmpty() || record.get().isEmpty()) return this;
        StoreRecord store = record.get();
        boolean warm = store.aboveLimit().compareTo(WARM_FOR) >= 0;
        return with(Clue.STORE_WARM, warm || store.largestSwingKelvin() > 3);
    }
}
