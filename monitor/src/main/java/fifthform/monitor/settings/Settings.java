package fifthform.monitor.settings;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The maker's choices that outlast a session.
 *
 * @param theme colours of the window
 * @param units how temperatures are shown; kept and computed are always °C
 * @param sound how loud
 * @param lastProbe port used last, for the next start without {@code --probe}
 * @param lastTalk protocol spoken there
 * @param lastChocolate recipe used last
 */
public record Settings(
        Theme theme,
        Units units,
        SoundLevel sound,
        Optional<String> lastProbe,
        Optional<String> lastTalk,
        Optional<String> lastChocolate) {
    /** What holds until the maker chooses otherwise. */
    public static final Settings USUAL = new Settings(
            Theme.BRIGHT, Units.CELSIUS, SoundLevel.USUAL, Optional.empty(), Optional.empty(), Optional.empty());

    public Settings {
        Objects.requireNonNull(theme, "theme");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(sound, "sound");
        Objects.requireNonNull(lastProbe, "lastProbe");
        Objects.requireNonNull(lastTalk, "lastTalk");
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

    /** How loud; never silent without the screen saying so all the time. */
    public enum SoundLevel {
        SCREEN_ONLY,
        QUIET,
        USUAL,
        LOUD;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Settings withTheme(Theme other) {
        return new Settings(other, units, sound, lastProbe, lastTalk, lastChocolate);
    }

    public Settings withUnits(Units other) {
        return new Settings(theme, other, sound, lastProbe, lastTalk, lastChocolate);
    }

    public Settings withSound(SoundLevel other) {
        return new Settings(theme, units, other, lastProbe, lastTalk, lastChocolate);
    }

    public Settings withLastProbe(String port, String talk) {
        return new Settings(theme, units, sound, Optional.of(port), Optional.of(talk), lastChocolate);
    }

    public Settings withLastChocolate(String id) {
        return new Settings(theme, units, sound, lastProbe, lastTalk, Optional.of(id));
    }
}
