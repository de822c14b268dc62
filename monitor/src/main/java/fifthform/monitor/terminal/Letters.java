package fifthform.monitor.terminal;

/** What the terminal can print. */
public enum Letters {
    UNICODE("█", "░"),
    ASCII("#", ":");

    private final String block;
    private final String shade;

    Letters(String block, String shade) {
        this.block = block;
        this.shade = shade;
    }

    String block() {
        return block;
    }

    String shade() {
        return shade;
    }

    /** The words as this terminal can print them. */
    String of(String words) {
        if (this == UNICODE) return words;
        StringBuilder plain = new StringBuilder();
        words.chars().forEach(letter -> plain.append(plain((char) letter)));
        return plain.toString();
    }

    private static String plain(char letter) {
        return switch (letter) {
            case '°' -> "";
            case '·', '–', '—', '−' -> "-";
            case '±' -> "+/-";
            case '×' -> "x";
            case '“', '”' -> "\"";
            case '’', '‘' -> "'";
            case '…' -> "...";
            default -> letter < 128 ? String.valueOf(letter) : "?";
        };
    }
}
