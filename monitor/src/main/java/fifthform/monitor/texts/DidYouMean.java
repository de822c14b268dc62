package fifthform.monitor.texts;

import fifthform.curves.check.Nearest;
import java.util.Collection;

/** The question with which a mistyped word is answered, wherever words are typed. */
public final class DidYouMean {
    private DidYouMean() {}

    /**
     * Asks for the known word that this one most likely stands for, with a space after the question, since what is
     * known is listed next; empty where none is near.
     */
    public static String oneOf(Collection<String> known, String typed) {
        return Nearest.to(typed, known)
                .map(near -> FileText.DID_YOU_MEAN.say(near))
                .orElse("");
    }
}
