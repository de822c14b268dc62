package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.model.Help;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.Look.Asking;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanField;
import fifthform.monitor.replay.Desks;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartStep;
import fifthform.monitor.start.StartStock;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.texts.PlainWords;
import fifthform.monitor.texts.PretendLanguage;
import fifthform.monitor.view.NotebookScreen.Side;
import fifthform.monitor.view.SetupScreen.Section;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Screen;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;

/** The windows in another language: no English word is left on them or in what they say of themselves. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class AnotherLanguageInWindowsTest {
    @TempDir
    Path folder;

    private PretendLanguage language;

    @BeforeEach
    void speak() {
        language = PretendLanguage.spoken();
    }

    @AfterEach
    void speakEnglishAgain() {
        language.close();
    }

    @Test
    void watch() throws Exception {
        Map<String, WatchPicture> shown = new TreeMap<>();
        Tapes.each(Tapes.UNPLUGGED, snapshot -> {
            WatchPicture picture = WatchModel.picture(
                    snapshot,
                    new Look(
                            Units.CELSIUS,
                            ZoneOffset.UTC,
                            List.of(),
                            KeyMap.USUAL,
                            KeyMap.USUAL.fill(LiveText.KEYS_OF_WATCH.say()),
                            Optional.empty(),
                            Optional.of(KeyMap.USUAL.fill(LiveText.NOTICE_OF_PRACTICE.say())),
                            Asking.ANSWERED));
            shown.putIfAbsent(said(picture), picture);
        });
        Set<String> english = new TreeSet<>();
        for (WatchPicture picture : shown.values()) {
            english.addAll(onScreen(picture));
            english.addAll(onScreen(Help.WHY.over(picture, KeyMap.USUAL)));
        }
        assertEquals(Set.of(), english);
    }

    /** What tells its pictures apart here: not the figures, which change with every reading. */
    private static String said(WatchPicture picture) {
        return (picture.heading()
                        + picture.band().headline()
                        + picture.crystals().word())
                .replaceAll("[0-9]+", "");
    }

    private static Set<String> onScreen(WatchPicture picture) throws Exception {
        return OnScreen.at(1366, 768, Theme.BRIGHT, picture, AnotherLanguageInWindowsTest::english);
    }

    @Test
    void replay() throws Exception {
        ReplayDesk desk = Desks.withCauses(Desks.tape("demo-own-way", folder));
        assertEquals(Set.of(), onFx(() -> {
            ReplayScreen screen = new ReplayScreen(new ReplayFeed(desk, List::of));
            laidOut(screen);
            Set<String> english = new TreeSet<>();
            for (ListsPane.Tab tab : ListsPane.Tab.values()) {
                screen.lists().open(tab);
                screen.show(desk.picture(screen.columns()));
                settle(screen);
                english.addAll(english(screen));
            }
            return english;
        }));
    }

    @Test
    void notebook() throws Exception {
        NotebookDesk desk = NotebookDemo.desk(NotebookDemo.record(folder), Units.CELSIUS);
        assertEquals(Set.of(), onFx(() -> {
            NotebookScreen screen = new NotebookScreen(desk, new NotebookPicturesTest.Deaf(), false);
            laidOut(screen);
            screen.show();
            screen.focusRows();
            Set<String> english = new TreeSet<>();
            for (Side side : Side.values()) {
                screen.open(side);
                settle(screen);
                english.addAll(english(screen));
            }
            return english;
        }));
    }

    @Test
    void setup() throws Exception {
        Folders folders = Folders.of("Linux", Map.of(), folder);
        new Bowls(folders.bowls()).keep(KeptBowl.named("demo", BowlMaterial.GLASS));
        SetupDesk desk = new SetupDesk(folders, () -> Instant.EPOCH);
        desk.set("key-mark", "page-down");
        desk.say("");
        assertEquals(Set.of(), onFx(() -> {
            SetupScreen screen = new SetupScreen(desk, Screen::getPrimary, volume -> Optional.empty());
            laidOut(screen);
            Set<String> english = new TreeSet<>();
            for (Section section : Section.values()) {
                screen.open(section);
                settle(screen);
                english.addAll(english(screen));
            }
            return english;
        }));
    }

    @Test
    void start() throws Exception {
        StartDesk desk = new StartDesk(new StartStock(
                Recipes.load(folder).known().stream().map(KnownRecipe::recipe).toList(),
                List.of(KeptBowl.named("demo", BowlMaterial.STEEL)),
                LastStart.NONE,
                Optional.empty(),
                Units.CELSIUS));
        desk.saw(List.of());
        for (StartStep step : StartStep.values()) {
            desk.open(step);
            assertEquals(Set.of(), onFx(() -> {
                StartScreen screen = new StartScreen(desk, key -> {});
                laidOut(screen);
                return english(screen);
            }));
        }
    }

    @Test
    void plan() throws Exception {
        PlanDesk desk = new PlanDesk(
                Recipes.load(folder).known().stream().map(KnownRecipe::recipe).toList(),
                List.of(KeptBowl.named("steel", BowlMaterial.STEEL).with(OptionalDouble.empty())),
                Units.CELSIUS,
                folder,
                () -> LocalDate.of(2026, 2, 3));
        desk.check(true);
        desk.type(PlanField.AMOUNT, "800");
        desk.say("");
        assertEquals(Set.of(), onFx(() -> {
            PlanScreen screen = new PlanScreen(desk, new PlanWindowTest.Deaf());
            laidOut(screen);
            screen.show();
            settle(screen);
            return english(screen);
        }));
    }

    private static Set<String> english(Parent screen) {
        List<String> said = new ArrayList<>();
        said(screen, said);
        List<String> names = new ArrayList<>(List.of("demo steel", "demo glass", "demo", SettingTable.NONE));
        for (KnownRecipe known : Recipes.load(Path.of("none")).known()) {
            names.add(known.recipe().name());
            names.add(known.recipe().id());
            known.recipe().sources().forEach(source -> names.add(source.text()));
        }
        Set<String> english = new TreeSet<>();
        for (String words : said)
            PlainWords.in(words.replace('\u00A0', ' '), names)
                    .forEach(word -> english.add(word + " in “" + words + "”"));
        return english;
    }

    private static void said(Node node, List<String> found) {
        if (!node.isVisible()) return;
        // A label's own letters may be cut off with dots; it is asked itself.
        if (node instanceof Text text && !(text.getParent() instanceof Labeled)) found.add(text.getText());
        if (node instanceof Labeled label && label.getText() != null) found.add(label.getText());
        if (node.getAccessibleText() != null) found.add(node.getAccessibleText());
        if (node instanceof ChoiceBox<?> box) shown(box, found);
        if (node instanceof Parent parent) parent.getChildrenUnmodifiable().forEach(child -> said(child, found));
    }

    private static <T> void shown(ChoiceBox<T> box, List<String> found) {
        for (T item : box.getItems())
            found.add(
                    box.getConverter() == null
                            ? String.valueOf(item)
                            : box.getConverter().toString(item));
    }

    private static void laidOut(Parent screen) {
        Scene scene = new Scene(screen, 1366, 768);
        assertEquals(1366, scene.getWidth());
        settle(screen);
    }

    private static void settle(Parent screen) {
        for (int i = 0; i < 3; i++) {
            screen.applyCss();
            screen.layout();
        }
    }

    private static <T> T onFx(Callable<T> made) throws Exception {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(made.call());
            } catch (Throwable failed) {
                answer.completeExceptionally(failed);
            }
        });
        return answer.get(60, TimeUnit.SECONDS);
    }
}
