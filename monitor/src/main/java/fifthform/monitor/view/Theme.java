package fifthform.monitor.view;

import fifthform.monitor.chart.Palette;
import java.util.List;
import java.util.Objects;

/** One of the two sets of colours: a style sheet, and the same colours for what style sheets cannot reach. */
public enum Theme {
    BRIGHT("bright.css", Palette.BRIGHT),
    DARK("dark.css", Palette.DARK);

    private final String sheet;
    private final Palette palette;

    Theme(String sheet, Palette palette) {
        this.sheet = sheet;
        this.palette = palette;
    }

    /** The other one. */
    public Theme other() {
        return this == BRIGHT ? DARK : BRIGHT;
    }

    Palette palette() {
        return palette;
    }

    List<String> styleSheets() {
        return List.of(address("watch.css"), address(sheet));
    }

    /** For the screens read at a desk: tables, fields and sliders in the same colours. */
    List<String> deskSheets() {
        return List.of(address("desk.css"), address(sheet));
    }

    /** A further sheet of one screen. */
    static String sheet(String name) {
        return address(name);
    }

    private static String address(String name) {
        return Objects.requireNonNull(Theme.class.getResource(name), name).toExternalForm();
    }
}
