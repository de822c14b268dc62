package fifthform.curves.engine;

import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What holds only because somebody said it: no reading can change it.
 *
 * @param changedSetup the set-up in force where it is no longer the header's
 * @param outSince since when the bowl's probe is out of the chocolate, while it is
 * @param storeTrouble what the journal last complained of, while it does
 * @param undoable what the maker's last act changed
 * @param moved the latest move of the bowl that was said and not taken back
 * @param others what another thermometer said, newest first
 * @param likeChocolateSince since when the readings of a probe that is said to be out have looked like chocolate
 * @param proved the last sample that was said to be proved
 */
public record Told(
        Optional<Setup> changedSetup,
        Optional<Instant> outSince,
        Optional<StoreTrouble.What> storeTrouble,
        Optional<Undoable> undoable,
        Optional<BowlMoved> moved,
        List<OtherReading> others,
        Optional<Instant> likeChocolateSince,
        Optional<SampleProved> proved) {
    private static final int OTHERS_KEPT = 4;

    /** Nobody has said anything yet. */
    static final Told NOTHING = new Told(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty());

    public Told {
        Objects.requireNonNull(changedSetup, "changedSetup");
        Objects.requireNonNull(outSince, "outSince");
        Objects.requireNonNull(storeTrouble, "storeTrouble");
        Objects.requireNonNull(undoable, "undoable");
        Objects.requireNonNull(moved, "moved");
        others = List.copyOf(others);
        Objects.requireNonNull(likeChocolateSince, "likeChocolateSince");
        Objects.requireNonNull(proved, "proved");
    }

    /** Whether the bowl's probe is in the chocolate. */
    ProbePlace probe() {
        return outSince.isPresent() ? ProbePlace.OUT : ProbePlace.IN_THE_CHOCOLATE;
    }

    Told withSetup(Setup setup) {
        return new Told(
                Optional.of(setup), outSince, storeTrouble, undoable, moved, others, likeChocolateSince, proved);
    }

    Told withProbeOut(Instant at) {
        return new Told(
                changedSetup,
                Optional.of(outSince.orElse(at)),
                storeTrouble,
                undoable,
                moved,
                others,
                Optional.empty(),
                proved);
    }

    Told withProbeIn() {
        return new Told(
                changedSetup, Optional.empty(), storeTrouble, undoable, moved, others, Optional.empty(), proved);
    }

    Told withLikeChocolate(Optional<Instant> since) {
        return new Told(changedSetup, outSince, storeTrouble, undoable, moved, others, since, proved);
    }

    Told withMove(BowlMoved move) {
        return new Told(
                changedSetup, outSince, storeTrouble, undoable, Optional.of(move), others, likeChocolateSince, proved);
    }

    Told withOther(OtherReading reading) {
        List<OtherReading> newest = new ArrayList<>(List.of(reading));
        newest.addAll(others.subList(0, Math.min(others.size(), OTHERS_KEPT - 1)));
        return new Told(changedSetup, outSince, storeTrouble, undoable, moved, newest, likeChocolateSince, proved);
    }

    Told withProved(SampleProved sample) {
        return new Told(
                changedSetup, outSince, storeTrouble, undoable, moved, others, likeChocolateSince, Optional.of(sample));
    }

    Told withStoreTrouble(StoreTrouble.What what) {
        Optional<StoreTrouble.What> still =
                what == StoreTrouble.What.WRITES_AGAIN ? Optional.empty() : Optional.of(what);
        return new Told(changedSetup, outSince, still, undoable, moved, others, likeChocolateSince, proved);
    }

    Told withUndoable(Undoable latest) {
        return new Told(
                changedSetup, outSince, storeTrouble, Optional.of(latest), moved, others, likeChocolateSince, proved);
    }

    /** As it was before the act; the same act cannot be taken back twice. */
    Told before(Undoable act) {
        return new Told(
                act.changedSetup(),
                act.outSince(),
                storeTrouble,
                Optional.empty(),
                act.moved(),
                others,
                Optional.empty(),
                proved);
    }
}
