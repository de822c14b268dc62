package fifthform.curves.recipe;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a fat that is neither cocoa butter nor milk fat does to cocoa butter. Common practice, no source. */
public enum OtherFat {
    /** Equivalents (shea stearin, illipe, palm mid fraction): the same crystals, in any share. */
    LIKE_BUTTER("like-butter"),
    /** Fats and oils that are soft or liquid in the kitchen (nuts, seeds, olive): they dissolve it, as milk fat does. */
    SOFT("soft"),
    /** Coconut and palm kernel, and compound coatings of them: they do not set together with it. */
    LAURIC("lauric");

    private final String word;

    OtherFat(String word) {
        this.word = word;
    }

    /** The word in commands. */
    public String word() {
        return word;
    }

    /** The kind with this {@link #word()}, if there is one. */
    public static Optional<OtherFat> fromWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** All words, for messages. */
    public static List<String> words() {
        return Arrays.stream(values()).map(OtherFat::word).toList();
    }
}
