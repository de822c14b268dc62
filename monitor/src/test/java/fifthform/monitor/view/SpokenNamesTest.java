package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.replay.Desks;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.view.NotebookScreen.Side;
import fifthform.monitor.view.SetupScreen.Section;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.stage.Screen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;

/** Everything at the desk that takes the focus says what it is, and in which state, to who cannot see it. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class SpokenNamesTest {
    @TempDir
    Path folder;

    @Test
    void setup() throws Exception {
        Folders folders = Folders.of("Linux", Map.of(), folder);
        new Bowls(folders.bowls()).keep(KeptBowl.named("demo", BowlMaterial.GLASS));
        SetupDesk desk = new SetupDesk(folders, () -> Instant.EPOCH);
        desk.set("key-mark", "f5");
        assertEquals(new TreeSet<>(), onFx(() -> {
            SetupScreen screen = new SetupScreen(desk, Screen::getPrimary, volume -> Optional.empty());
            laidOut(screen);
            TreeSet<String> nameless = new TreeSet<>();
            for (Section section : Section.values()) {
                screen.open(section);
                settle(screen);
                nameless(screen, nameless);
            }
            return nameless;
        }));
    }

    @Test
    void notebook() throws Exception {
        NotebookDesk desk = NotebookDemo.desk(NotebookDemo.record(folder), Units.CELSIUS);
        assertEquals(new TreeSet<>(), onFx(() -> {
            NotebookScreen screen = new NotebookScreen(desk, new NotebookPicturesTest.Deaf(), false);
            laidOut(screen);
            screen.show();
            screen.focusRows();
            TreeSet<String> nameless = new TreeSet<>();
            for (Side side : Side.values()) {
                screen.open(side);
                settle(screen);
                nameless(screen, nameless);
            }
            return nameless;
        }));
    }

    @Test
    void replay() throws Exception {
        var desk = Desks.withCauses(Desks.tape("demo-own-way", folder));
        assertEquals(new TreeSet<>(), onFx(() -> {
            ReplayScreen screen = new ReplayScreen(new ReplayFeed(desk, List::of));
            laidOut(screen);
            screen.show(desk.picture(screen.columns()));
            TreeSet<String> nameless = new TreeSet<>();
            nameless(screen, nameless);
            return nameless;
        }));
    }

    private static void laidOut(Parent screen) {
        Scene scene = new Scene(screen, 1366, 768);
        assertTrue(scene.getWidth() > 0);
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

    /** What takes the focus without a name or a role; panes that only scroll are passed over. */
    private static void nameless(Node node, TreeSet<String> found) {
        if (!node.isVisible()) return;
        if (node.isFocusTraversable() && !(node instanceof ScrollPane)) {
            String name = String.valueOf(node.getAccessibleText());
            Object words = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
            boolean named = node.getAccessibleText() != null && !name.isBlank()
                    || node.getAccessibleRole() != AccessibleRole.TEXT_FIELD
                            && node.getAccessibleRole() != AccessibleRole.TEXT_AREA
                            && words instanceof String said
                            && !said.isBlank();
            boolean says = node.getAccessibleRole() != null && node.getAccessibleRole() != AccessibleRole.NODE;
            if (!named || !says) found.add(node.getClass().getSimpleName() + " #" + node.getId());
        }
        if (node instanceof Parent parent) for (Node child : parent.getChildrenUnmodifiable()) nameless(child, found);
    }
}
