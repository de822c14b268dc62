package fifthform.monitor.view;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Scrolls to what has the focus or was opened, where large letters have pushed it out of sight. */
final class Reveal {
    private Reveal() {}

    /** Scrolls, where the pane holds it. */
    static void reveal(Node focused, ScrollPane pane) {
        if (focused == null) return;
        if (!(pane.getContent() instanceof Region content) || !isWithin(focused, content)) return;
        double shown = pane.getViewportBounds().getHeight();
        double high = content.getHeight() - shown;
        if (high <= 0) return;
        Bounds at = content.sceneToLocal(focused.localToScene(focused.getBoundsInLocal()));
        double top = pane.getVvalue() * high;
        boolean tall = at.getHeight() > shown;
        boolean begins = at.getMinY() >= top && at.getMinY() < top + shown / 2;
        if (at.getMinY() < top || tall && !begins) pane.setVvalue(Math.min(1, at.getMinY() / high));
        else if (!tall && at.getMaxY() > top + shown) pane.setVvalue(Math.min(1, (at.getMaxY() - shown) / high));
    }

    /** Scrolls so that it begins at the top, as far as there is something to scroll. */
    static void begin(Node wanted, ScrollPane pane) {
        if (!(pane.getContent() instanceof Region content) || !isWithin(wanted, content)) return;
        double high = content.getHeight() - pane.getViewportBounds().getHeight();
        if (high <= 0) return;
        Bounds at = content.sceneToLocal(wanted.localToScene(wanted.getBoundsInLocal()));
        pane.setVvalue(Math.max(0, Math.min(1, at.getMinY() / high)));
    }

    private static boolean isWithin(Node node, Node whole) {
        for (Node each = node; each != null; each = each.getParent()) if (each == whole) return true;
        return false;
    }
}
