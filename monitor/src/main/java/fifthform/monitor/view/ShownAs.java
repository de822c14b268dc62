package fifthform.monitor.view;

import java.util.Objects;
import java.util.function.Function;
import javafx.util.StringConverter;

/** How a choice is shown, where nothing is typed. */
final class ShownAs<T> extends StringConverter<T> {
    private final Function<? super T, String> words;

    ShownAs(Function<? super T, String> words) {
        this.words = Objects.requireNonNull(words, "words");
    }

    @Override
    public String toString(T value) {
        return value == null ? "" : words.apply(value);
    }

    @Override
    public T fromString(String typed) {
        throw new UnsupportedOperationException("nothing is typed here");
    }
}
