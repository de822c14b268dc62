package fifthform.monitor.app;

import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.DidYouMean;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Words of options that must be one of a few; another one ends the command before anything was done. */
final class OneOf {
    private OneOf() {}

    /**
     * The choice that was named, in whatever case.
     *
     * @param option as the maker types it
     * @param word by which a choice is named
     * @throws Refusal none of them has this word
     */
    static <T> T named(String option, String said, List<T> choices, Function<? super T, String> word) throws Refusal {
        String plain = said.strip();
        for (T choice : choices) if (word.apply(choice).equalsIgnoreCase(plain)) return choice;
        List<String> words = choices.stream().<String>map(word).toList();
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                CommandText.WAS_NOTHING_WAS_DONE_SAY_ONE_OF.say(
                        option,
                        said,
                        DidYouMean.oneOf(words, plain.toLowerCase(Locale.ROOT)),
                        String.join(", ", words)));
    }
}
