package fifthform.curves.engine;

import fifthform.curves.input.StoreTrouble;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.util.Objects;
import java.util.Optional;

/**
 * What holds only because somebody said it: no reading can change it.
 *
 * @param changedSetup the set-up in force where it is no longer the header's
 * @param probe whether the bowl's probe is in the chocolate
 * @param storeTrouble what the journal last complained of, while it does
 * @param undoable what the maker's last act changed
 */
public record Told(
        Optional<Setup> changedSetup,
        ProbePlace probe,
        Optional<StoreTrouble.What> storeTrouble,
        Optional<Undoable> undoable) {
    /** Nobody has said anything yet. */
    static final Told NOTHING =
            new Told(Optional.empty(), ProbePlace.IN_THE_CHOCOLATE, Optional.empty(), Optional.empty());

    public Told {
        Objects.requireNonNull(changedSetup, "changedSetup");
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(storeTrouble, "storeTrouble");
        Objects.requireNonNull(undoable, "undoable");
    }

    Told withSetup(Setup setup) {
        return new Told(Optional.of(setup), probe, storeTrouble, undoable);
    }

    Told withProbe(ProbePlace place) {
        return new Told(changedSetup, place, storeTrouble, undoable);
    }

    Told withStoreTrouble(StoreTrouble.What what) {
        Optional<StoreTrouble.What> still =
                what == StoreTrouble.What.WRITES_AGAIN ? Optional.empty() : Optional.of(what);
        return new Told(changedSetup, probe, still, undoable);
    }

    Told withUndoable(Undoable latest) {
        return new Told(changedSetup, probe, storeTrouble, Optional.of(latest));
    }

    /** As it was before the act; the same act cannot be taken back twice. */
    Told before(Undoable act) {
        return new Told(act.changedSetup(), act.probe(), storeTrouble, Optional.empty());
    }
}
