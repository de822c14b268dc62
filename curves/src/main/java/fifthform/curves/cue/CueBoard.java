package fifthform.curves.cue;

import fifthform.curves.input.MakerAction.Place;
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
 * @param liftReached the reading at which the second to lift was first found to have come, while it is; one reading
 *     alone is not enough to tell a maker to lift
 */
public record CueBoard(Map<CueId, OpenCue> open, Optional<Instant> liftReached) {

    public CueBoard {
        EnumMap<CueId, OpenCue> copy = new EnumMap<>(CueId.class);
        copy.putAll(open);
        open = Collections.unmodifiableMap(copy);
        Objects.requireNonNull(liftReached, "liftReached");
    }

    /** Nothing is due. */
    public static CueBoard empty() {
        return new CueBoard(new EnumMap<>(CueId.class), Optional.empty());
    }

    public boolean isOpen(CueId id) {
        return open.containsKey(id);
    }

    /** Since when this step is due. */
    public Optional<Instant> openSince(CueId id) {
        return Optional.ofNullable(open.get(id)).map(OpenCue::since);
    }

    /** The steps that can still be done where the bowl stands. */
    CueBoard fitting(Place place) {
        EnumMap<CueId, OpenCue> kept = new EnumMap<>(CueId.class);
        open.forEach((id, cue) -> {
            boolean fits = switch (id) {
                case MELTED, GET_READY, LIFT_NOW -> place == Place.BATH;
                case STOP_COOLING -> place == Place.COLD_WATER;
                case PUT_BACK -> place == Place.TABLE;
                case CRYSTALS_ENOUGH -> place != Place.BATH;
                case STIR_ON, IN_RANGE -> true;
            };
            if (fits) kept.put(id, cue);
        });
        return new CueBoard(kept, liftReached);
    }

    /** A board on which the given steps are due; those that were due before keep their time. */
    CueBoard next(Map<CueId, OptionalDouble> due, Optional<Instant> reached, Instant now) {
        EnumMap<CueId, OpenCue> after = new EnumMap<>(CueId.class);
        due.forEach((id, figure) -> after.put(id, new OpenCue(openSince(id).orElse(now), figure)));
        return new CueBoard(after, reached);
    }
}
