package fifthform.curves.recipe;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The keys of a recipe's text, in the order in which they are written. */
enum RecipeKey {
    ID(Kind.ID),
    NAME(Kind.TEXT),
    BASIS(Kind.TEXT),
    COCOA_BUTTER(Kind.PERCENT),
    MILK_FAT(Kind.PERCENT),
    SUGAR(Kind.PERCENT),
    OTHER_SOLIDS(Kind.PERCENT),
    MELT_LOW(Kind.CELSIUS),
    MELT_HIGH(Kind.CELSIUS),
    MELT_HOLD(Kind.SECONDS),
    COOL_LOW(Kind.CELSIUS),
    COOL_HIGH(Kind.CELSIUS),
    COOL_HOLD(Kind.SECONDS),
    WORK_LOW(Kind.CELSIUS),
    WORK_HIGH(Kind.CELSIUS),
    WARN(Kind.CELSIUS),
    MELT_OUT(Kind.CELSIUS),
    SCORCH(Kind.CELSIUS),
    BATH(Kind.CELSIUS);

    /** What a key's value is, with an example for messages. */
    enum Kind {
        ID("dark-70"),
        TEXT("a few words"),
        PERCENT("38 %"),
        CELSIUS("31.5 C"),
        SECONDS("6 min");

        final String example;

        Kind(String example) {
            this.example = example;
        }

        boolean isNumber() {
            return this != ID && this != TEXT;
        }
    }

    final Kind kind;

    RecipeKey(Kind kind) {
        this.kind = kind;
    }

    /** The key as it is written: {@code cocoa butter}, {@code melt-out}. */
    String word() {
        // The only key whose two words are one term of the trade.
        return this == MELT_OUT ? "melt-out" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Optional<RecipeKey> fromWord(String word) {
        return Arrays.stream(values()).filter(key -> key.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(RecipeKey::word).toList();
    }
}
