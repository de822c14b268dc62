package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Outlook;
import java.util.List;
import javafx.scene.Group;

/** How fast it moves, how sure that is, and what will happen: three columns that stay where they are. */
final class OutlookPane extends Group {
    private static final int MOST = 3;

    /** Size of the words in parts of a line's height; figures are somewhat larger. */
    private static final double SIZE = 0.64;

    private static final double LARGER = 1.22;

    private final Words rate = new Words(Typeface.REGULAR, "quiet");
    private final Words doubt = new Words(Typeface.REGULAR);
    private final List<Row> rows = List.of(new Row(), new Row(), new Row());

    OutlookPane() {
        getChildren().addAll(rate, doubt);
        for (Row row : rows) getChildren().addAll(row.label, row.value, row.detail);
    }

    void lay(WatchPicture picture, Box box, double u) {
        double first = 46 * u;
        double used =
                rate.place(picture.rate(), new Box(box.x(), box.y(), box.width(), first), 36 * u, 1, Words.Side.LEFT);
        double left = box.x() + used + (used > 0 ? 30 * u : 0);
        doubt.place(
                picture.numeral().doubt(),
                // Less high than the line: what hangs below a second one would stand on the row underneath.
                new Box(left, box.y() + 3 * u, Math.max(u, box.right() - left), first - 6 * u),
                28 * u,
                2,
                Words.Side.LEFT);
        List<Outlook> outlooks = picture.outlooks();
        int count = Math.min(MOST, outlooks.size());
        double pitch = Math.min(56 * u, (box.height() - first) / Math.max(2, count));
        for (int i = 0; i < MOST; i++) {
            Box line = new Box(box.x(), box.y() + first + i * pitch, box.width(), pitch);
            rows.get(i).lay(i < count ? outlooks.get(i) : new Outlook("", "", ""), line);
        }
    }

    /** Label, figure, detail. */
    private static final class Row {
        private final Words label = new Words(Typeface.REGULAR);
        private final Words value = new Words(Typeface.BOLD);
        private final Words detail = new Words(Typeface.REGULAR, "quiet");

        void lay(Outlook outlook, Box line) {
            double size = line.height() * SIZE;
            double labelWide = line.width() * 0.42;
            // Room for one figure; for a band that stands in the place of a figure, up to twice as much.
            double wanted = Words.widthOf(outlook.value(), Typeface.BOLD, size * LARGER);
            double valueWide = Math.max(line.width() * 0.155, Math.min(line.width() * 0.32, wanted));
            double gap = line.width() * 0.025;
            label.place(
                    outlook.label(), new Box(line.x(), line.y(), labelWide, line.height()), size, 1, Words.Side.LEFT);
            double valueAt = line.x() + labelWide + gap;
            value.place(
                    outlook.value(),
                    new Box(valueAt, line.y(), valueWide, line.height()),
                    size * LARGER,
                    1,
                    Words.Side.LEFT);
            double detailAt = valueAt + valueWide + gap;
            Box rest = new Box(detailAt, line.y(), line.x() + line.width() - detailAt, line.height());
            detail.place(outlook.detail(), rest, size * 0.84, 2, Words.Side.LEFT);
        }
    }
}
