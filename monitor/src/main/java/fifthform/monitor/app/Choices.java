package fifthform.monitor.app;

import fifthform.monitor.model.KeyMap;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.view.Theme;
import java.io.PrintWriter;
import java.util.Objects;

/**
 * The maker's choices as a screen wears them.
 *
 * @param settings as they are kept
 * @param keys which key does what
 */
record Choices(Settings settings, KeyMap keys) {
    /** As the program comes. */
    static final Choices USUAL = new Choices(Settings.USUAL, KeyMap.USUAL);

    Choices {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(keys, "keys");
    }

    /** Loads them and says on {@code err} what of them cannot be used. */
    static Choices load(Folders folders, PrintWriter err) {
        SettingsFile.Loaded loaded = new SettingsFile(folders.settingsFile()).load();
        loaded.problems().forEach(err::println);
        KeyMap.Read keys = KeyMap.read(loaded.settings().keys());
        keys.problems().forEach(problem -> err.println(folders.settingsFile() + ": " + problem));
        return new Choices(loaded.settings(), keys.keys());
    }

    Theme theme() {
        return theme(settings);
    }

    static Theme theme(Settings settings) {
        return settings.theme() == Settings.Theme.DARK ? Theme.DARK : Theme.BRIGHT;
    }
}
