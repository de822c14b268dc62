package fifthform.monitor.settings;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The maker's choices that outlast a session.
 *
 * @param theme colours of the window
 * @param motion whether anything blinks
 * @param units how temperatures are shown; kept and computed are always °C
 * @param volume how loud alarms and cues are
 * @param hearing whether the urgent sound was heard, where that was asked
 * @param keys the maker's own keys, by the name of the act; {@code KeyMap} reads them
 * @param sizes real sizes, and the distance from which Watch is read
 * @param sessions folder of new sessions, where it is not within the data folder
 * @param language code of the language of the words, where it is not to be that of the computer
 * @param last how the last real batch was begun, for the next start without options
 */
public record Settings(
        Theme theme,
        Motion motion,
        Units units,
        Volume volume,
        Optional<Hearing> hearing,
        Map<String, String> keys,
        ScreenSizes sizes,
        Optional<String> sessions,
        Optional<String> language,
        LastStart last) {
    /** What holds until the maker chooses otherwise. */
    public static final Settings USUAL = new Settings(
            Theme.BRIGHT,
            Motion.BLINKING,
            Units.CELSIUS,
            Volume.FULL,
            Optional.empty(),
            Map.of(),
            ScreenSizes.USUAL,
            Optional.empty(),
            Optional.empty(),
            LastStart.NONE);

    public Settings {
        Objects.requireNonNull(theme, "theme");
        Objects.requireNonNull(motion, "motion");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(hearing, "hearing");
        keys = Collections.unmodifiableMap(new TreeMap<>(keys));
        Objects.requireNonNull(sizes, "sizes");
        Objects.requireNonNull(sessions, "sessions");
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(last, "last");
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
        return new Settings(other, motion, units, volume, hearing, keys, sizes, sessions, language, last);
    }

    public Settings withMotion(Motion other) {
        return new Settings(theme, other, units, volume, hearing, keys, sizes, sessions, language, last);
    }

    public Settings withUnits(Units other) {
        return new Settings(theme, motion, other, volume, hearing, keys, sizes, sessions, language, last);
    }

    public Settings withVolume(Volume other) {
        return new Settings(theme, motion, units, other, hearing, keys, sizes, sessions, language, last);
    }

    public Settings withHearing(Optional<Hearing> other) {
        return new Settings(theme, motion, units, volume, other, keys, sizes, sessions, language, last);
    }

    public Settings withKeys(Map<String, String> other) {
        return new Settings(theme, motion, units, volume, hearing, other, sizes, sessions, language, last);
    }

    public Settings withSizes(ScreenSizes other) {
        return new Settings(theme, motion, units, volume, hearing, keys, other, sessions, language, last);
    }

    public Settings withSessions(Optional<String> other) {
        return new Settings(theme, motion, units, volume, hearing, keys, sizes, other, language, last);
    }

    public Settings withLanguage(Optional<String> other) {
        return new Settings(theme, motion, units, volume, hearing, keys, sizes, sessions, other, last);
    }

    public Settings withLast(LastStart other) {
        return new Settings(theme, motion, units, volume, hearing, keys, sizes, sessions, language, other);
    }

    public Optional<String> lastProbe() {
        return last.probe();
    }

    public Optional<String> lastChocolate() {
        return last.chocolate();
    }

    public Settings withLastProbe(Optional<String> other) {
        return withLast(last.withProbe(other));
    }

    public Settings withLastChocolate(Optional<String> other) {
        return withLast(last.withChocolate(other));
    }

    public Settings withLastProbe(String port) {
        return withLastProbe(Optional.of(port));
    }

    public Settings withLastChocolate(String id) {
        return withLastChocolate(Optional.of(id));
    }
}
