package fifthform.monitor.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FoldersTest {
    private static final Path HOME = Path.of("/home/demo");

    @Test
    void linuxFollowsTheBaseDirectorySpecification() {
        Folders folders = Folders.of(
                "Linux", Map.of("XDG_DATA_HOME", "/d", "XDG_CONFIG_HOME", "/c", "XDG_STATE_HOME", "/s"), HOME);
        assertEquals(Path.of("/d/fifthform/sessions"), folders.sessions());
        assertEquals(Path.of("/d/fifthform/recipes"), folders.recipes());
        assertEquals(Path.of("/c/fifthform/settings.json"), folders.settingsFile());
        assertEquals(Path.of("/s/fifthform/log"), folders.log());
    }

    @Test
    void linuxHasItsDefaultsAndIgnoresRelativePaths() {
        Folders folders = Folders.of("Linux", Map.of("XDG_DATA_HOME", "relative", "XDG_CONFIG_HOME", ""), HOME);
        assertEquals(HOME.resolve(".local/share/fifthform"), folders.data());
        assertEquals(HOME.resolve(".config/fifthform/settings.json"), folders.settingsFile());
        assertEquals(HOME.resolve(".local/state/fifthform/log"), folders.log());
    }

    @Test
    void windowsAndMacHaveOneFolder() {
        assertEquals(
                Path.of("/roaming/FifthForm/settings.json"),
                Folders.of("Windows 11", Map.of("APPDATA", "/roaming"), HOME).settingsFile());
        assertEquals(
                HOME.resolve("AppData/Roaming/FifthForm/sessions"),
                Folders.of("Windows 10", Map.of(), HOME).sessions());
        assertEquals(
                HOME.resolve("Library/Application Support/Fifth Form/recipes"),
                Folders.of("Mac OS X", Map.of("XDG_DATA_HOME", "/d"), HOME).recipes());
    }

    @Test
    void optionsMoveDataAndSessionsOnly() {
        Folders usual = Folders.of("Linux", Map.of(), HOME);
        Folders moved = usual.withData(Path.of("/elsewhere"));
        assertEquals(Path.of("/elsewhere/sessions"), moved.sessions());
        assertEquals(usual.settingsFile(), moved.settingsFile());
        Folders recorded = moved.withSessions(Path.of("/stick"));
        assertEquals(Path.of("/stick"), recorded.sessions());
        assertEquals(Path.of("/elsewhere/recipes"), recorded.recipes());
    }
}
