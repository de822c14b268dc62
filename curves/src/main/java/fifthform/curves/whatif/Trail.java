package fifthform.curves.whatif;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Temper;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Collects from the engine's steps what a what-if needs of a batch. Grows with the batch by 12 bytes a reading, at most
 * two readings a second, and by some kilobytes a lift. Not for several threads; {@link #batch()} may be asked at any time.
 */
public final class Trail {
    /** Closer readings tell nothing more of a bowl, ms. */
    private static final long SPACING_MILLIS = 450;

    /** A bath moves slowly, ms. */
    private static final long BATH_SPACING_MILLIS = 5_000;

    /** How often the crystals are kept before a lift, and how far back: no lift is moved further. */
    private static final Duration KEPT_EVERY = Duration.ofSeconds(5);

    private static final Duration KEPT_FOR = Duration.ofSeconds((long) Change.LiftMoved.MOST_SECONDS + 10);

    private final Setup header;
    private final Readings bowl = new Readings();
    private final Readings bath = new Readings();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Instant> otherActs = new ArrayList<>();
    private final List<Word> words = new ArrayList<>();
    private final List<Kept> saved = new ArrayList<>();
    private final Deque<Kept> kept = new ArrayDeque<>();
    private Optional<BowlMoved> key = Optional.empty();
    private Optional<Contact> contact = Optional.empty();
    private Optional<SeedWord> word = Optional.empty();
    private Setup setup;
    private Phase phase = Phase.MELT;
    private double celsius;
    private Instant now = Instant.EPOCH;

    /**
     * Nothing collected yet.
     *
     * @param header the set-up of the session's first line
     */
    public Trail(Setup header) {
        this.header = Objects.requireNonNull(header, "header");
        this.setup = header;
    }

    /** Takes one step: the state before it and what it led to. */
    public void take(State before, Step step) {
        State after = step.after();
        now = after.at();
        setup = after.setupInForce(header);
        moved(after);
        boolean wentOut = after.probe() != before.probe();
        boolean seeded =
                after.cues().done().seededGrams() > before.cues().done().seededGrams();
        if (wentOut || seeded) otherActs.add(now);
        reading(before, after);
        bathReading(after);
        phase = after.batch().phase();
        crystals(after);
    }

    private void moved(State after) {
        Contact next = after.batch().contact();
        Optional<BowlMoved> said = after.told().moved();
        if (!said.equals(key)) {
            boolean takenBack = key.isPresent()
                    && (said.isEmpty() || said.get().at().isBefore(key.get().at()));
            // A move that was taken back never was.
            if (takenBack)
                marks.removeIf(m -> m.isTold() && !m.at().isBefore(key.get().at()));
            else mark(said.get().at(), said.get().to(), Evidence.TOLD);
            key = said;
        }
        boolean moved = contact.isEmpty() || contact.get().place() != next.place();
        boolean byKey = next.evidence() == Evidence.TOLD
                && key.filter(k -> k.to() == next.place()).isPresent();
        if (moved && !byKey) mark(next.since(), next.place(), next.evidence());
        contact = Optional.of(next);
    }

    private void mark(Instant at, Place to, Evidence evidence) {
        marks.add(new Mark(at, to, evidence, phase, celsius));
        saved.addAll(kept);
        kept.clear();
    }

    private void reading(State before, State after) {
        Optional<Estimate> news = after.estimate()
                .filter(Estimate::isUsable)
                .filter(e -> after.probe() == ProbePlace.IN_THE_CHOCOLATE)
                .filter(e ->
                        before.estimate().filter(b -> b.at().equals(e.at())).isEmpty());
        if (news.isEmpty()) return;
        celsius = news.get().chocolateCelsius();
        Instant at = news.get().at();
        if (!bowl.isNewer(at, SPACING_MILLIS)) return;
        after.tracks()
                .of(setup.bowlProbe().id())
                .ifPresent(track -> track.lastCelsius().ifPresent(tip -> bowl.add(at, tip)));
    }

    private void bathReading(State after) {
        Optional<Track> track = after.tracks().of(setup, Role.BATH).filter(t -> t.isTrustedAt(now));
        if (track.isEmpty() || !bath.isNewer(track.get().lastGood(), BATH_SPACING_MILLIS)) return;
        track.get().lastCelsius().ifPresent(c -> bath.add(track.get().lastGood(), c));
    }

    private void crystals(State after) {
        Optional<Temper> temper = after.crystals();
        Optional<SeedWord> said = temper.flatMap(t -> t.watch().spoken().word());
        if (!said.equals(word)) {
            word = said;
            words.add(new Word(now, said));
        }
        if (temper.isEmpty() || phase == Phase.MELT) return;
        Kept last = kept.peekLast();
        boolean due = last == null || Duration.between(last.at(), now).compareTo(KEPT_EVERY) >= 0;
        if (!due) return;
        Kept next = new Kept(now, temper.get().watch(), temper.get().stir());
        kept.addLast(next);
        while (Duration.between(kept.peekFirst().at(), now).compareTo(KEPT_FOR) > 0) kept.removeFirst();
    }

    /** What has been collected so far. */
    public PastBatch batch() {
        List<Kept> crystals = new ArrayList<>(saved);
        crystals.addAll(kept);
        return new PastBatch(setup, bowl.copy(), bath.copy(), Stay.of(marks, now), otherActs, words, crystals);
    }
}
