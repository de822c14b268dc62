package fifthform.monitor.view;

import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartStep;
import fifthform.monitor.texts.StartText;
import java.util.Locale;
import java.util.Optional;

/** The keys of the start page, beside arrows and digits. */
enum StartKey {
    TAKE(StartText.KEY_TAKE, '\n'),
    BACK(StartText.KEY_BACK, '\u001b'),
    AS_LAST(StartText.KEY_LAST, 'l'),
    GO_ON(StartText.KEY_GO_ON, 'g'),
    PRACTISE(StartText.KEY_PRACTISE, 'x'),
    PLAN(StartText.KEY_PLAN, 'p'),
    SETUP(StartText.KEY_SETUP, 's'),
    THEME(StartText.KEY_THEME, 't'),
    CLOSE(StartText.KEY_CLOSE, 'q');

    private final StartText words;
    private final char letter;

    StartKey(StartText words, char letter) {
        this.words = words;
        this.letter = letter;
    }

    static Optional<StartKey> typed(char character) {
        for (StartKey key : values()) if (key.letter == Character.toLowerCase(character)) return Optional.of(key);
        return Optional.empty();
    }

    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String cap() {
        return switch (this) {
            case TAKE -> StartText.ENTER.say();
            case BACK -> StartText.ESCAPE.say();
            default -> String.valueOf(Character.toUpperCase(letter));
        };
    }

    String word(StartStep step) {
        return this == TAKE && step == StartStep.GO ? StartText.KEY_GO.say() : words.say();
    }

    boolean isShown(StartDesk desk) {
        return switch (this) {
            case BACK -> desk.step() != StartStep.CHOCOLATE;
            case AS_LAST -> desk.last().isPresent();
            case GO_ON -> desk.cutOff().isPresent();
            default -> true;
        };
    }
}
