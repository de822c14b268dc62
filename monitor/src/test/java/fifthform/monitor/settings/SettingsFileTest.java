package fifthform.monitor.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.settings.Settings.Theme;
import fifthform.monitor.settings.SettingsFile.Loaded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsFileTest {
    @TempDir
    Path folder;

    private Path file;
    private SettingsFile settings;

    @BeforeEach
    void place() {
        file = folder.resolve("config/settings.json");
        settings = new SettingsFile(file);
    }

    @Test
    void whatIsSavedIsLoaded() throws IOException {
        Settings chosen = Settings.USUAL
                .withTheme(Theme.DARK)
                .withUnits(Units.FAHRENHEIT)
                .withLastProbe("/dev/ttyUSB0")
                .withLastChocolate("milk");
        settings.save(Settings.USUAL);
        settings.save(chosen);
        assertEquals(new Loaded(chosen, List.of()), settings.load());
        try (var files = Files.list(file.getParent())) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void noFileIsNoProblem() {
        assertEquals(new Loaded(Settings.USUAL, List.of()), settings.load());
    }

    @Test
    void anUnreadableFileIsKeptUnderAnotherNameAndSaid() throws IOException {
        Files.createDirectories(file.getParent());
        for (String broken : List.of("{\"theme\":", "second")) {
            Files.writeString(file, broken);
            Loaded loaded = settings.load();
            assertEquals(Settings.USUAL, loaded.settings());
            assertEquals(1, loaded.problems().size());
            assertTrue(loaded.problems().get(0).whatToDo().contains("settings.json.unreadable"));
            assertFalse(Files.exists(file));
        }
        assertEquals("{\"theme\":", Files.readString(file.resolveSibling("settings.json.unreadable")));
        assertEquals("second", Files.readString(file.resolveSibling("settings.json.unreadable-2")));
    }

    @Test
    void oneOddValueLeavesTheOthers() throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "{\"theme\":\"drak\",\"units\":\"fahrenheit\",\"last-probe\":7,\"new\":[1]}");
        Loaded loaded = settings.load();
        assertEquals(Settings.USUAL.withUnits(Units.FAHRENHEIT), loaded.settings());
        assertEquals(2, loaded.problems().size());
        assertTrue(loaded.problems().get(0).whatToDo().startsWith("Did you mean \"dark\"?"));
        assertTrue(Files.exists(file));
    }
}
