package fifthform.simulator.maker;

import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A batch in somebody's hands: which stage, where the bowl stands, what is being done to it, and the keys pressed. */
final class Course {
    /** The outside is wiped so long after the bowl left the water, so that nothing drips into the moulds. */
    private static final Duration WIPED_AFTER = Duration.ofSeconds(20);

    private final StirRhythm rhythm;
    private final Duration stirredAfterAMove;
    private final List<MakerAction> presses = new ArrayList<>();
    private Stage stage = Stage.MELTING;
    private Spot spot = Spot.TABLE;
    private Optional<Instant> stageSince = Optional.empty();
    private Optional<Instant> backOnTableAt = Optional.empty();
    private Optional<Instant> wipeAt = Optional.empty();

    /**
     * @param stirredAfterAMove a bowl just put somewhere else is stirred without a pause for so long
     */
    Course(StirRhythm rhythm, Duration stirredAfterAMove) {
        this.rhythm = rhythm;
        this.stirredAfterAMove = stirredAfterAMove;
    }

    Stage stage() {
        return stage;
    }

    Spot spot() {
        return spot;
    }

    /** How long the present stage has lasted. */
    Duration inStageFor(Instant at) {
        return Duration.between(stageSince.orElse(at), at);
    }

    /** Begins this stage, or goes back to its beginning without a new patience: the bowl goes where it belongs. */
    void begin(Instant at, Stage next) {
        if (stage != next || stageSince.isEmpty()) stageSince = Optional.of(at);
        stage = next;
        backOnTableAt = Optional.empty();
        move(at, next.spot());
    }

    /** Puts the bowl somewhere for a while; then it stands on the table again. The stage stays. */
    void visit(Instant at, Spot visited, Duration time) {
        move(at, visited);
        backOnTableAt = Optional.of(at.plus(time));
    }

    /** What the hands do at this moment. */
    Hands hands(Instant at) {
        if (stageSince.isEmpty()) begin(at, Stage.MELTING);
        if (due(backOnTableAt, at)) {
            backOnTableAt = Optional.empty();
            move(at, Spot.TABLE);
        }
        Towel towel = due(wipeAt, at) ? Towel.WIPING : Towel.LEFT;
        if (towel == Towel.WIPING) wipeAt = Optional.empty();
        return new Hands(spot, rhythm.vigourFraction(at), towel);
    }

    List<MakerAction> takePresses() {
        List<MakerAction> taken = List.copyOf(presses);
        presses.clear();
        return taken;
    }

    private void move(Instant at, Spot to) {
        if (to == spot) return;
        if (place(to) != place(spot)) presses.add(new BowlMoved(at, place(to)));
        spot = to;
        rhythm.keepOn(at, stirredAfterAMove);
        wipeAt = to == Spot.TABLE ? Optional.of(at.plus(WIPED_AFTER)) : Optional.empty();
    }

    private static Place place(Spot spot) {
        return switch (spot) {
            case TABLE, COOL_CLOTH, WARM_CLOTH, FRIDGE -> Place.TABLE;
            case HOT_BATH, WARM_BATH -> Place.BATH;
            case COLD_WATER -> Place.COLD_WATER;
        };
    }

    private static boolean due(Optional<Instant> when, Instant at) {
        return when.isPresent() && !at.isBefore(when.get());
    }
}
