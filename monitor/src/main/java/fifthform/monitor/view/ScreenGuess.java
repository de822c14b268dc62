package fifthform.monitor.view;

import fifthform.monitor.settings.ScreenScale;
import fifthform.monitor.settings.ScreenSizes;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;

/** How large a screen's pixels are: as it was measured with a card, else as the screen says of itself. */
final class ScreenGuess {
    private static final double MILLIMETRES_AN_INCH = 25.4;

    private ScreenGuess() {}

    /** As measured; empty where nobody has. */
    static Optional<ScreenScale> measured(Screen screen, ScreenSizes sizes) {
        Rectangle2D bounds = screen.getBounds();
        return sizes.of(bounds.getWidth(), bounds.getHeight());
    }

    static ScreenScale scale(Screen screen, ScreenSizes sizes) {
        return measured(screen, sizes)
                .orElseGet(() -> new ScreenScale(Math.max(
                        ScreenScale.LEAST, Math.min(ScreenScale.MOST, screen.getDpi() / MILLIMETRES_AN_INCH))));
    }
}
