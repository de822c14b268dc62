package fifthform.curves.whatif;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A batch as far as a what-if needs it: the readings as they were believed, where the bowl stood, and the crystals at
 * the turns. {@link Trail} collects it from an engine's steps.
 */
public final class PastBatch {
    /** Crystals of longer ago do not stand for a moment. */
    private static final Duration LATELY = Duration.ofSeconds(15);

    private final Setup setup;
    private final Readings bowl;
    private final Readings bath;
    private final List<Stay> stays;
    private final List<Instant> otherActs;
    private final List<Word> words;
    private final List<Kept> crystals;
    private final List<PastLift> lifts;

    /**
     * A batch.
     *
     * @param setup in force at its end
     * @param bowl the tip in the chocolate, corrected, °C
     * @param bath the probe in the bath, corrected, °C; empty where there is none
     * @param stays where the bowl stood, without a gap, oldest first
     * @param otherActs times of other acts that change where the chocolate goes
     * @param words what was said of the seed
     * @param crystals the crystals every few seconds before each move, oldest first
     */
    PastBatch(
            Setup setup,
            Readings bowl,
            Readings bath,
            List<Stay> stays,
            List<Instant> otherActs,
            List<Word> words,
            List<Kept> crystals) {
        this.setup = Objects.requireNonNull(setup, "setup");
        this.bowl = Objects.requireNonNull(bowl, "bowl");
        this.bath = Objects.requireNonNull(bath, "bath");
        this.stays = List.copyOf(stays);
        this.otherActs = List.copyOf(otherActs);
        this.words = List.copyOf(words);
        this.crystals = List.copyOf(crystals);
        this.lifts = lifts(this.stays);
    }

    private static List<PastLift> lifts(List<Stay> stays) {
        List<PastLift> found = new ArrayList<>();
        for (int i = 0; i + 1 < stays.size(); i++) {
            Stay stay = stays.get(i);
            Stay next = stays.get(i + 1);
            if (stay.place() == Place.TABLE || next.place() != Place.TABLE) continue;
            found.add(new PastLift(
                    found.size() + 1,
                    stay.from(),
                    next.from(),
                    stay.place(),
                    next.came().evidence(),
                    next.came().phase(),
                    next.came().celsius()));
        }
        return found;
    }

    /**
     * Goes through a recording.
     *
     * @param header the set-up of its first line
     * @param start when it started
     * @param inputs all its inputs, in order
     */
    public static PastBatch of(Setup header, Instant start, Iterable<? extends Input> inputs) {
        Trail trail = new Trail(header);
        State state = Engine.start(header, start);
        for (Input input : inputs) {
            Step step = Engine.step(header, state, input);
            trail.take(state, step);
            state = step.after();
        }
        return trail.batch();
    }

    /** The set-up that was in force at the end. */
    public Setup setup() {
        return setup;
    }

    /** The lifts that a {@link Change} may be about, oldest first. */
    public List<PastLift> lifts() {
        return lifts;
    }

    /**
     * The lift that most is asked about: the one that ended the longest stay over the bath after the cool step; where there
     * is none, the last lift of all.
     */
    public Optional<PastLift> mainLift() {
        Optional<PastLift> main = Optional.empty();
        for (PastLift lift : lifts) {
            boolean rewarm = lift.from() == Place.BATH && lift.phase() != Phase.MELT;
            boolean longest =
                    main.filter(m -> stay(m).compareTo(stay(lift)) >= 0).isEmpty();
            if (rewarm && longest) main = Optional.of(lift);
        }
        return main.or(() -> lifts.isEmpty() ? Optional.empty() : Optional.of(lifts.get(lifts.size() - 1)));
    }

    private static Duration stay(PastLift lift) {
        return Duration.between(lift.enteredAt(), lift.at());
    }

    Readings bowl() {
        return bowl;
    }

    Readings bath() {
        return bath;
    }

    /** The place in {@link #stays()} of the stay that this lift ended. */
    int stayBefore(PastLift lift) {
        for (int i = 0; i + 1 < stays.size(); i++) {
            if (stays.get(i + 1).from().equals(lift.at())) return i;
        }
        throw new IllegalArgumentException("no lift of this batch: " + lift);
    }

    List<Stay> stays() {
        return stays;
    }

    /** The first act after this time that changes where the chocolate goes, moves of the bowl left out. */
    Optional<Instant> otherActAfter(Instant at) {
        for (Instant act : otherActs) if (act.isAfter(at)) return Optional.of(act);
        return Optional.empty();
    }

    /** The crystals shortly before this time. */
    Optional<Kept> crystalsAt(Instant at) {
        Optional<Kept> found = Optional.empty();
        for (Kept each : crystals) {
            if (each.at().isAfter(at)) break;
            found = Optional.of(each);
        }
        return found.filter(k -> Duration.between(k.at(), at).compareTo(LATELY) <= 0);
    }

    /** What was said of the seed at this time. */
    Optional<SeedWord> wordAt(Instant at) {
        Optional<SeedWord> said = Optional.empty();
        for (Word word : words) {
            if (word.at().isAfter(at)) break;
            said = word.word();
        }
        return said;
    }
}
