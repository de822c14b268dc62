package fifthform.curves.whatif;

import fifthform.curves.input.MakerAction.Place;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The bowl in one place, as hindsight has it.
 *
 * @param place where
 * @param came its coming there
 * @param unsureSeconds how far apart a key and the curve were about when it came, s; 0 where only one of them spoke
 * @param to when it left; the last that is known where it has not
 */
record Stay(Place place, Mark came, double unsureSeconds, Instant to) {
    /**
     * Where the curve seemed to show a move and a key told the same one later, the key is believed, since a spoon that
     * rests looks like a lift; later than this it is another move.
     */
    private static final Duration SAME_MOVE = Duration.ofMinutes(4);

    /** A place that the curve alone showed between two others of one kind, for so short a time, was none. */
    private static final Duration FLICKER = Duration.ofSeconds(100);

    Stay {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(came, "came");
        Objects.requireNonNull(to, "to");
    }

    Instant from() {
        return came.at();
    }

    /** The stays that these marks make, up to {@code end}. */
    static List<Stay> of(List<Mark> marks, Instant end) {
        List<Stay> stays = new ArrayList<>();
        for (Mark mark : marks) add(stays, mark, end);
        List<Stay> whole = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            Instant to = i + 1 < stays.size() ? stays.get(i + 1).from() : end;
            Stay stay = stays.get(i);
            Instant left = to.isBefore(stay.from()) ? stay.from() : to;
            whole.add(new Stay(stay.place(), stay.came(), stay.unsureSeconds(), left));
        }
        return whole;
    }

    private static void add(List<Stay> stays, Mark mark, Instant end) {
        int n = stays.size();
        if (n > 0 && stays.get(n - 1).place() == mark.to()) {
            Stay last = stays.get(n - 1);
            boolean same = mark.isTold()
                    && !last.came().isTold()
                    && Duration.between(last.from(), mark.at()).compareTo(SAME_MOVE) <= 0;
            if (same) stays.set(n - 1, new Stay(mark.to(), mark, seconds(last.from(), mark.at()), end));
            return;
        }
        if (n > 1 && !mark.isTold()) {
            Stay between = stays.get(n - 1);
            boolean back = stays.get(n - 2).place() == mark.to()
                    && !between.came().isTold()
                    && Duration.between(between.from(), mark.at()).compareTo(FLICKER) <= 0;
            if (back) {
                stays.remove(n - 1);
                return;
            }
        }
        stays.add(new Stay(mark.to(), mark, 0, end));
    }

    private static double seconds(Instant from, Instant to) {
        return (to.toEpochMilli() - from.toEpochMilli()) / 1000.0;
    }
}
