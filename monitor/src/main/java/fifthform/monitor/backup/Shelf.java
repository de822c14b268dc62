package fifthform.monitor.backup;

import fifthform.monitor.settings.Folders;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The folders whose files go into a backup; each is a folder of the same name in the archive. */
enum Shelf {
    SESSIONS,
    SENT,
    RECIPES,
    PROBES,
    BOWLS,
    CUPS,
    BIN,
    SENT_BIN;

    /** Its name in the archive. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Where it is on this computer. */
    Path in(Folders folders) {
        return switch (this) {
            case SESSIONS -> folders.sessions();
            case SENT -> folders.sent();
            case RECIPES -> folders.recipes();
            case PROBES -> folders.probes();
            case BOWLS -> folders.bowls();
            case CUPS -> folders.cups();
            case BIN -> folders.bin();
            case SENT_BIN -> folders.sentBin();
        };
    }

    /** Whether it holds what was put away. */
    boolean isBin() {
        return this == BIN || this == SENT_BIN;
    }

    static Optional<Shelf> named(String word) {
        for (Shelf shelf : values()) if (shelf.word().equals(word)) return Optional.of(shelf);
        return Optional.empty();
    }
}
