package fifthform.monitor.model;

import java.util.List;

/** What takes the place of the standing notice while the maker asks: H turns from one page to the next, W shows the reason. */
public enum Help {
    /** The notice itself. */
    CLOSED {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            return picture;
        }
    },
    /** What the keys are for. */
    KEYS {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            boolean training = picture.kitchen() == WatchPicture.Kitchen.TRAINING;
            return picture.answering(keys.fill(training ? TRAINING_WORDS : KEY_WORDS));
        }
    },
    /** What the figure beside the reading is made of. */
    TRUST {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            String words = String.join(" ", picture.numeral().trust());
            return picture.answering(
                    (words.isEmpty() ? "Nothing was read yet." : words) + keys.fill(" {help}: hide this."));
        }
    },
    /** Why the program says what it says, in figures. */
    WHY {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            String words = String.join(" ", picture.why()) + crystals(picture);
            return picture.answering((words.isEmpty() ? "Nothing was read yet, so nothing is due." : words)
                    + keys.fill(" {why}: hide this."));
        }
    };

    private static final String KEY_WORDS =
            "{seen}: I have seen it, be quiet. {step-done}: the step is done. {why}: why, in figures. {bowl-moved}: I moved"
                    + " the bowl on or off the bath. {mark}: mark this moment. {note}: note it for later. {undo}: take the"
                    + " last key back. {probe-out}: the probe is out of the chocolate, or in again. {other}: what another"
                    + " thermometer says. {chocolate}: other chocolate. {stir}: it is stirred; again: it is left alone."
                    + " {let-go} {let-go}: let go of the probe's port, {let-go} takes it back. {it-is-the-bowl}: it is the"
                    + " bowl, where that is doubted. {proved}: a sample was proved, in temper; {proved} {proved}: not in"
                    + " temper; {proved} {proved} {proved}: unclear. {earlier}, {later}:"
                    + " the earlier curve, {now}: back to now. {faster} and {slower}: speed of practice. {quit}: end"
                    + " and keep the session. {help}: how far the reading can be trusted.";

    private static final String TRAINING_WORDS =
            "These keys are your hands. {why}: why, in figures. {bowl-moved}: the bowl on or off the water. {cold-water}:"
                    + " into cold water. {stir}: stir, or stop. {seed}: throw seed in, then its grams and Enter. {dry}: dry"
                    + " the bowl. {probe-out}: the probe out, or in again. {step-done}: do the step on the screen. {undo}:"
                    + " take the last key back. {seen}: I have seen it, be quiet. {faster} and {slower}: speed. {quit}"
                    + " {quit}: end, with the debrief. {help}: how far the reading can be trusted.";

    /** The same picture with this page as its notice. */
    public abstract WatchPicture over(WatchPicture picture, KeyMap keys);

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
