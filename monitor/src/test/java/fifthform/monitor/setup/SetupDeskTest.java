package fifthform.monitor.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Ingredients;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.model.Key;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetupDeskTest {
    private static final Instant NOW = Instant.parse("2026-02-03T18:00:00Z");

    @TempDir
    Path home;

    private Folders folders;
    private SetupDesk desk;

    @BeforeEach
    void open() {
        folders = Folders.of("Linux", Map.of(), home);
        desk = new SetupDesk(folders, () -> NOW);
    }

    private Settings kept() {
        return new SettingsFile(folders.settingsFile()).load().settings();
    }

    @Test
    void everySettingTakesItsOwnValueAndItsUsualOne() {
        for (Setting setting : desk.all()) {
            assertEquals(List.of(), desk.set(setting.name(), desk.value(setting.name())), setting.name());
            for (String word : setting.possible()) {
                assertEquals(List.of(), desk.set(setting.name(), word), setting.name());
                assertEquals(word, new SetupDesk(folders, () -> NOW).value(setting.name()));
            }
            assertEquals(List.of(), desk.setUsual(setting.name()), setting.name());
            assertTrue(desk.isUsual(setting.name()), setting.name());
        }
        assertEquals(Settings.USUAL, kept());
    }

    @Test
    void everyChangeIsTakenBackInTheOrderOfTheChanges() {
        Map<String, String> wished = Map.of(
                "theme", "dark",
                "units", "fahrenheit",
                "volume", "screen-only",
                "heard", "no",
                "distance", "1.5",
                "key-mark", "f5",
                "screen-1920x1080", "3.6",
                "sessions", "/batches",
                "chocolate", "milk");
        wished.forEach((name, value) -> assertEquals(List.of(), desk.set(name, value), name));
        wished.forEach((name, value) -> assertEquals(value, desk.value(name)));
        for (int i = 0; i < wished.size(); i++) desk.undo();
        assertEquals(Settings.USUAL, kept());
        desk.undo();
        assertEquals("Nothing to bring back.", desk.said());
    }

    @Test
    void whatCannotBeIsRefusedInWordsAndChangesNothing() {
        Map<String, String> wrong = Map.of(
                "theme", "pink",
                "distance", "far",
                "key-mark", "b",
                "key-note", "two",
                "screen-1920x1080", "0",
                "sessions", "not/from/the/top",
                "heard", "perhaps",
                "colour", "red");
        wrong.forEach((name, value) -> {
            List<Problem> problems = desk.set(name, value);
            assertEquals(1, problems.size(), name);
            assertFalse(problems.get(0).whatToDo().isBlank(), name);
        });
        assertEquals(Settings.USUAL, kept());
        assertFalse(Files.exists(folders.settingsFile()));
    }

    @Test
    void severalAreSetTogetherOrNotAtAll() {
        assertEquals(
                1, desk.setAll(Map.of("units", "f", "theme", "pink"), List.of()).size());
        assertEquals(Settings.USUAL, kept());
        assertEquals(List.of(), desk.setAll(Map.of("units", "f", "key-mark", "page-down"), List.of("theme")));
        assertEquals("fahrenheit", desk.value("units"));
        assertEquals("Page Down", desk.keys().cap(Key.MARK));
    }

    @Test
    void whatAnotherWindowSetsIsSeenAndNotLost() {
        SetupDesk other = new SetupDesk(folders, () -> NOW);
        desk.set("theme", "dark");
        other.set("units", "fahrenheit");
        assertEquals("dark", other.value("theme"));
        desk.refresh();
        assertEquals("fahrenheit", desk.value("units"));
        assertTrue(desk.said().contains("changed elsewhere"), desk.said());
    }

    @Test
    void aChocolateIsChangedAsACopyAndNeverTheBuiltInOne() throws Exception {
        Chocolates chocolates = new Chocolates(folders.recipes());
        KnownRecipe dark = chocolates.known().stream()
                .filter(known -> known.recipe().id().equals("dark"))
                .findFirst()
                .orElseThrow();
        assertEquals(1, chocolates.check(dark.text()).size());
        String own = chocolates.copy(dark);
        assertEquals(List.of(), chocolates.check(own));
        assertEquals("my-dark", chocolates.keep(own).fold(id -> id, Object::toString));
        String other = own.replace("work high = 32 C", "work high = 31.8 C");
        assertEquals("my-dark", chocolates.keep(other).fold(id -> id, Object::toString));
        try (var files = Files.list(folders.recipes())) {
            assertEquals(
                    List.of("my-dark.recipe", "my-dark.recipe.before"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        assertFalse(chocolates
                .check(own.replace("work high = 32 C", "work high = 20 C"))
                .isEmpty());
        String worked = chocolates.from("my-own", Ingredients.plain(38, 0, 30)).fold(text -> text, Object::toString);
        assertEquals(List.of(), chocolates.check(worked));
    }
}
