package fifthform.monitor.model;

import java.util.Optional;

/** What the keys are for, in place of the standing notice while the maker asks for it. */
public final class Help {
    static final String WORDS =
            "Space: I have seen it, be quiet. Enter: the step is done. B: I moved the bowl on or off"
                    + " the bath. M: mark this moment. N: note it for later. U: take the last key back. P: the probe is out of"
                    + " the chocolate, or in again. O: what another thermometer says. C: other chocolate. L L: let go of the probe's port, L takes it back. + and –: speed of practice. Q: end and keep the session."
                    + " H: hide this.";

    private Help() {}

    /** The same picture with the help as its notice. */
    public static WatchPicture over(WatchPicture picture) {
        return new WatchPicture(
                picture.simulated(),
                picture.heading(),
                picture.subject(),
                picture.marks(),
                picture.clock(),
                picture.band(),
                picture.numeral(),
                picture.rate(),
                picture.outlooks(),
                picture.ladder(),
                picture.trace(),
                picture.tiles(),
                picture.foot(),
                picture.alarms(),
                picture.keys(),
                picture.undo(),
                Optional.of(WORDS));
    }
}
