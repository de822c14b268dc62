package fifthform.monitor.model;

import java.util.List;

/** What takes the place of the standing notice while the maker asks: H turns from one page to the next, W shows the reason. */
public enum Help {
    /** The notice itself. */
    CLOSED {
        @Override
        public WatchPicture over(WatchPicture picture) {
            return picture;
        }
    },
    /** What the keys are for. */
    KEYS {
        @Override
        public WatchPicture over(WatchPicture picture) {
            boolean training = picture.kitchen() == WatchPicture.Kitchen.TRAINING;
            return picture.answering(training ? TRAINING_WORDS : KEY_WORDS);
        }
    },
    /** What the figure beside the reading is made of. */
    TRUST {
        @Override
        public WatchPicture over(WatchPicture picture) {
            String words = String.join(" ", picture.numeral().trust());
            return picture.answering(
                    words.isEmpty() ? "Nothing was read yet. H: hide this." : words + " H: hide this.");
        }
    },
    /** Why the program says what it says, in figures. */
    WHY {
        @Override
        public WatchPicture over(WatchPicture picture) {
            String words = String.join(" ", picture.why()) + crystals(picture);
            return picture.answering(
                    words.isEmpty()
                            ? "Nothing was read yet, so nothing is due. W: hide this."
                            : words + " W: hide this.");
        }
    };

    private static final String KEY_WORDS =
            "Space: I have seen it, be quiet. Enter: the step is done. W: why, in figures. B: I moved the bowl on or off"
                    + " the bath. M: mark this moment. N: note it for later. U: take the last key back. P: the probe is out of"
                    + " the chocolate, or in again. O: what another thermometer says. C: other chocolate. S: it is stirred; again: it is left alone. L L: let go of the probe's port, L takes it back. I: it is the bowl, where that is doubted. V: a sample was proved, in temper; V V: not in temper; V V V: unclear. + and –: speed of practice. Q: end and keep the session."
                    + " H: how far the reading can be trusted.";

    private static final String TRAINING_WORDS =
            "These keys are your hands. W: why, in figures. B: the bowl on or off the water. K: into cold water. S: stir, or stop. G: throw"
                    + " seed in, then its grams and Enter. D: dry the bowl. P: the probe out, or in again. Enter: do the"
                    + " step on the screen. U: take the last key back. Space: I have seen it, be quiet. + and –: speed."
                    + " Q Q: end, with the debrief. H: how far the reading can be trusted.";

    /** The same picture with this page as its notice. */
    public abstract WatchPicture over(WatchPicture picture);

    private static String crystals(WatchPicture picture) {
        List<String> why = picture.crystals().why();
        return why.isEmpty() ? "" : (picture.why().isEmpty() ? "" : " ") + String.join(" ", why);
    }

    /** The page after this one, for H. */
    public Help next() {
        return switch (this) {
            case CLOSED, WHY -> KEYS;
            case KEYS -> TRUST;
            case TRUST -> CLOSED;
        };
    }

    /** The page once a key is pressed: H turns pages, W shows the reason or hides it; the others turn nothing. */
    public Help after(Key key) {
        if (key == Key.HELP) return next();
        if (key == Key.WHY) return this == WHY ? CLOSED : WHY;
        return this;
    }
}
