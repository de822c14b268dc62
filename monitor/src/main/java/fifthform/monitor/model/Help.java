package fifthform.monitor.model;

import fifthform.monitor.texts.WatchText;
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
            return picture.answering(keys.fill(training ? TRAINING_WORDS.say() : KEY_WORDS.say()));
        }
    },
    /** What the figure beside the reading is made of. */
    TRUST {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            String words = String.join(" ", picture.numeral().trust());
            return picture.answering((words.isEmpty() ? WatchText.NOTHING_WAS_READ_YET.say() : words)
                    + keys.fill(WatchText.HELP_HIDE_THIS.say()));
        }
    },
    /** Why the program says what it says, in figures. */
    WHY {
        @Override
        public WatchPicture over(WatchPicture picture, KeyMap keys) {
            String words = String.join(" ", picture.why()) + crystals(picture);
            return picture.answering((words.isEmpty() ? WatchText.NOTHING_WAS_READ_YET_SO.say() : words)
                    + keys.fill(WatchText.WHY_HIDE_THIS.say()));
        }
    };

    private static final WatchText KEY_WORDS = WatchText.SEEN_I_HAVE_SEEN_IT_BE;

    private static final WatchText TRAINING_WORDS = WatchText.THESE_KEYS_ARE_YOUR_HANDS_WHY;

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
