package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Notice;
import javafx.scene.Group;
import javafx.scene.shape.Rectangle;

/** A standing notice on its own panel, marked by a bar at its left edge. */
final class BannerPane extends Group {
    private final Rectangle panel = new Rectangle();
    private final Rectangle bar = new Rectangle();
    private final Words words = new Words(Typeface.REGULAR);

    BannerPane() {
        panel.getStyleClass().add("panel");
        bar.getStyleClass().add("accent");
        getChildren().addAll(panel, bar, words);
    }

    void lay(WatchPicture picture, Box box, double u) {
        String notice = picture.banner().orElse("");
        boolean asked = picture.notice() == Notice.ASKED;
        setVisible(!notice.isEmpty() && box.height() > 0);
        place(panel, box);
        place(bar, new Box(box.x(), box.y(), 8 * u, box.height()));
        Box text =
                new Box(box.x() + 26 * u, box.y() + 10 * u, box.width() - 44 * u, Math.max(u, box.height() - 24 * u));
        words.place(notice, text, (asked ? 30 : 25) * u, asked ? 5 : 3, Words.Side.LEFT);
    }

    private static void place(Rectangle rectangle, Box box) {
        rectangle.setX(box.x());
        rectangle.setY(box.y());
        rectangle.setWidth(box.width());
        rectangle.setHeight(box.height());
    }
}
