package fifthform.monitor.settings;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The maker's choices that outlast a session.
 *
 * @param theme colours of the window
 * @param units how temperatures are shown; kept and computed are always °C
 * @param lastProbe port used last, for the next start without {@code --probe}
 * @param lastChocolate recipe used last
 */
public record Settings(Theme theme, Units units, Optional<String> lastProbe, Optional<String> lastChocolate) {
    /** What holds until the maker chooses otherwise. */
    public static final Settings USUAL = new Settings(Theme.BRIGHT, Units.CELSIUS, Optional.empty(), Optional.empty());

    public Settings {
        Objects.requireNonNull(theme, "theme");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(lastProbe, "lastProbe");
        Objects.requireNonNull(lastChocolate, "lastChocolate");
    }

    /** Colours of the window. */
    public enum Theme {
        BRIGHT,
        DARK;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Settings withTheme(Theme other) {
        return new Settings(other, units, lastProbe, lastChocolate);
    }

    public Settings withUnits(Units other) {
        return new Settings(theme, other, lastProbe, lastChocolate);
    }

    public Settings withLastProbe(String port) {
        return new Settings(theme, units, Optional.of(port), lastChocolate);
    }

    public Settings withLastChocolate(String id) {
        return new Settings(theme, units, lastProbe, Optional.of(id));
    }
}
