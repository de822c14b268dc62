package fifthform.monitor.terminal;

import fifthform.monitor.model.WatchPicture.Tone;
import org.jline.utils.AttributedStyle;

/** How words stand out: with colours, or without any, as NO_COLOR asks. Shape and word say the same either way. */
public enum Ink {
    COLOUR,
    PLAIN;

    AttributedStyle plain() {
        return AttributedStyle.DEFAULT;
    }

    AttributedStyle bold() {
        return AttributedStyle.BOLD;
    }

    AttributedStyle quiet() {
        return this == COLOUR
                ? AttributedStyle.DEFAULT.foreground(AttributedStyle.BRIGHT + AttributedStyle.BLACK)
                : plain();
    }

    AttributedStyle limit() {
        return this == COLOUR ? AttributedStyle.DEFAULT.foreground(AttributedStyle.RED) : plain();
    }

    AttributedStyle forecast() {
        return this == COLOUR ? AttributedStyle.DEFAULT.foreground(AttributedStyle.CYAN) : plain();
    }

    AttributedStyle warning() {
        return limit().bold();
    }

    /** What the line of the next action looks like. */
    AttributedStyle band(Tone tone) {
        AttributedStyle reversed = AttributedStyle.BOLD.inverse();
        return switch (tone) {
            case CALM -> bold();
            case CUE -> reversed;
            case ADVISE -> this == COLOUR ? forecast().bold() : bold();
            case PROMPT ->
                this == COLOUR
                        ? AttributedStyle.BOLD.foreground(AttributedStyle.BLACK).background(AttributedStyle.YELLOW)
                        : reversed;
            case URGENT ->
                this == COLOUR
                        ? AttributedStyle.BOLD
                                .foreground(AttributedStyle.BRIGHT + AttributedStyle.WHITE)
                                .background(AttributedStyle.RED)
                        : reversed;
        };
    }
}
