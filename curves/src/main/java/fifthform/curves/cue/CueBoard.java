package fifthform.curves.cue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.situation.Reason;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The steps that are due.
 *
 * @param open what is due, in the order of {@link CueId}
 * @param lift waiting for the second to lift
 * @param dips the short dips of this batch
 * @param done what has been done and need not be said again
 * @param held the planned hold in the working range so far
 */
public record CueBoard(Map<CueId, OpenCue> open, LiftWait lift, Dips dips, Done done, Held held) {

    public CueBoard {
        EnumMap<CueId, OpenCue> copy = new EnumMap<>(CueId.class);
        copy.putAll(open);
        open = Collections.unmodifiableMap(copy);
        Objects.requireNonNull(lift, "lift");
        Objects.requireNonNull(dips, "dips");
        Objects.requireNonNull(done, "done");
        Objects.requireNonNull(held, "held");
    }

    /** What a look finds due. */
    record Due(OptionalDouble figure, Reason reason) {
        Due {
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(reason, "reason");
        }
    }

    /** Nothing is due. */
    public static CueBoard empty() {
        return new CueBoard(new EnumMap<>(CueId.class), LiftWait.NONE, Dips.NONE, Done.NOTHING, Held.NOT_YET);
    }

    public boolean isOpen(CueId id) {
        return open.containsKey(id);
    }

    /** Since when this step is due. */
    public Optional<Instant> openSince(CueId id) {
        return Optional.ofNullable(open.get(id)).map(OpenCue::since);
    }

    /** The board once seed went in; nobody asks for it twice. */
    public CueBoard seeded(double grams) {
        return new CueBoard(open, lift, dips, done.seeded(grams), held);
    }

    /** Nothing is due while the probe is out; what the dips showed stays. */
    CueBoard cleared() {
        return new CueBoard(new EnumMap<>(CueId.class), LiftWait.NONE, dips.after(dips.response()), done, held);
    }

    /** The steps that can still be done where the bowl stands. */
    CueBoard fitting(Place place) {
        EnumMap<CueId, OpenCue> kept = new EnumMap<>(CueId.class);
        open.forEach((id, cue) -> {
            boolean fits = switch (id) {
                case MELTED, GET_READY, LIFT_NOW, OFF_NOW -> place == Place.BATH;
                case STOP_COOLING -> place == Place.COLD_WATER;
                case PUT_BACK, TOUCH_OF_WARMTH, TOUCH_OF_WARM_AIR, WIPE_AND_STIR -> place == Place.TABLE;
                case CRYSTALS_ENOUGH, WARM_UP, MELT_FIRST, THICKENS_SOON -> place != Place.BATH;
                case STIR_ON, IN_RANGE, SEED_NOW, SEED_OUT, WEAK_BATH, BOX_WARMER, BOX_COOLER, KEEP_FLUID, HOLD_OVER ->
                    true;
            };
            if (fits) kept.put(id, cue);
        });
        return new CueBoard(kept, lift, dips, done, held);
    }

    /** A board on which the given steps are due; those that were due before keep their time. */
    CueBoard next(Map<CueId, Due> due, LiftWait liftNow, Dips dipsNow, Done doneNow, Held heldNow, Instant now) {
        EnumMap<CueId, OpenCue> after = new EnumMap<>(CueId.class);
        due.forEach((id, is) -> after.put(id, new OpenCue(openSince(id).orElse(now), is.figure(), is.reason())));
        return new CueBoard(after, liftNow, dipsNow, doneNow, heldNow);
    }
}
