package fifthform.monitor.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.settings.Settings.Theme;
import fifthform.monitor.settings.SettingsFile.Loaded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
        settings.change(now -> Settings.USUAL);
        settings.change(now -> chosen);
        assertEquals(new Loaded(chosen, List.of()), settings.load());
        try (var files = Files.list(file.getParent())) {
            assertEquals(
                    List.of(file, file.resolveSibling("settings.json.lock")),
                    files.sorted().toList());
        }
    }

    @Test
    void everyChoiceIsKept() throws IOException {
        Settings chosen = Settings.USUAL
                .withMotion(Motion.STILL)
                .withVolume(Volume.SOFT)
                .withHearing(Optional.of(new Hearing(Instant.parse("2026-02-03T18:00:00Z"), true, Volume.FULL)))
                .withKeys(Map.of("mark", "page-down", "note", "$"))
                .withSizes(ScreenSizes.USUAL
                        .with("1920x1080", new ScreenScale(3.625))
                        .withMetres(1.5))
                .withSessions(Optional.of("/batches"))
                .withLanguage(Optional.of("en"))
                .withLast(new LastStart(
                        Optional.of("/dev/ttyUSB0"),
                        Optional.of("milk"),
                        Optional.of("big glass"),
                        OptionalDouble.of(650)));
        settings.change(now -> chosen);
        assertEquals(new Loaded(chosen, List.of()), settings.load());
        assertEquals(Optional.of(Path.of("/batches")), settings.sessions());
        assertEquals(Optional.of("en"), settings.language());
    }

    @Test
    void aLanguageWithoutTextsIsLeftAsideAndSaid() throws IOException {
        settings.change(now -> now);
        Files.writeString(file, "{\"language\":\"fr\"}");
        Loaded loaded = settings.load();
        assertEquals(Settings.USUAL, loaded.settings());
        assertEquals(1, loaded.problems().size(), loaded.problems().toString());
        assertEquals("Possible: en.", loaded.problems().get(0).whatToDo());
        assertEquals(Optional.empty(), settings.language());
    }

    /** Two windows, or a window and a batch that ends, change different things. */
    @Test
    void whatAnotherProgramChangedMeanwhileIsNotLost() throws IOException {
        SettingsFile other = new SettingsFile(file);
        settings.change(now -> now.withTheme(Theme.DARK));
        other.change(now -> now.withLastProbe("/dev/ttyUSB1"));
        assertEquals(
                Settings.USUAL.withTheme(Theme.DARK).withLastProbe("/dev/ttyUSB1"),
                settings.load().settings());
    }

    @Test
    void numbersThatCannotBeAreLeftAsideAndSaid() throws IOException {
        settings.change(now -> now);
        Files.writeString(
                file,
                "{\"screen-px-per-mm-1920x1080\":0,\"screen-px-per-mm-800x600\":3,\"distance-m\":\"far\","
                        + "\"hearing-at\":\"yesterday\",\"hearing-heard\":true}");
        Loaded loaded = settings.load();
        assertEquals(3, loaded.problems().size(), loaded.problems().toString());
        assertEquals(
                Settings.USUAL.withSizes(ScreenSizes.USUAL.with("800x600", new ScreenScale(3))), loaded.settings());
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
