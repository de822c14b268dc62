package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.texts.ViewText;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;

/** Where the batch stands, whether it is only practice, and the standing marks. */
final class TopLine extends Group {
    static final ViewText PRACTICE = ViewText.PRACTICE_SIMULATED_BOWL;

    private final Words heading = new Words(Typeface.REGULAR);
    private final Rectangle practiceEdge = new Rectangle();
    private final Words practice = new Words(Typeface.BOLD);
    private final Words subject = new Words(Typeface.REGULAR, "quiet");
    private final Words clock = new Words(Typeface.REGULAR);
    private final Rectangle rule = new Rectangle();
    private final Group marks = new Group();
    private List<Mark> marked = List.of();
    private final List<MarkNode> nodes = new ArrayList<>();

    TopLine() {
        practiceEdge.getStyleClass().add("outlined");
        rule.getStyleClass().add("rule");
        getChildren().addAll(rule, heading, practiceEdge, practice, subject, marks, clock);
    }

    void lay(WatchPicture picture, Box box, double u) {
        Box text = new Box(box.x(), box.y() + 9 * u, box.width(), box.height() - 20 * u);
        rule.setX(0);
        rule.setY(box.bottom() - 2 * u);
        rule.setWidth(box.right() + box.x());
        rule.setHeight(2 * u);
        double right = box.right();
        right -= clock.place(
                picture.clock(),
                new Box(right - 110 * u, text.y(), 110 * u, text.height()),
                26 * u,
                1,
                Words.Side.RIGHT);
        right = layMarks(picture.marks(), right - 26 * u, text, u) - 14 * u;
        double left = box.x();
        double most = (right - left) * (picture.simulated() ? 0.44 : 0.62);
        left += heading.placeLarge(
                        picture.heading(), new Box(left, text.y(), most, text.height()), 26 * u, 2, Words.Side.LEFT)
                + 26 * u;
        left = layPractice(picture.simulated(), left, text, u);
        subject.placeLarge(
                picture.subject(),
                new Box(left, text.y(), Math.max(u, right - left), text.height()),
                26 * u,
                2,
                Words.Side.LEFT);
    }

    private double layPractice(boolean simulated, double left, Box box, double u) {
        practiceEdge.setVisible(simulated);
        if (!simulated) {
            practice.place("", box, 22 * u, 1, Words.Side.LEFT);
            return left;
        }
        double wide = practice.place(
                PRACTICE.say(), new Box(left + 12 * u, box.y(), 330 * u, box.height()), 21 * u, 1, Words.Side.LEFT);
        practiceEdge.setX(left);
        practiceEdge.setY(box.middle() - 18 * u);
        practiceEdge.setWidth(wide + 24 * u);
        practiceEdge.setHeight(36 * u);
        practiceEdge.setStrokeWidth(3 * u);
        return left + wide + 24 * u + 24 * u;
    }

    private double layMarks(List<Mark> wanted, double right, Box box, double u) {
        if (!wanted.equals(marked)) {
            marked = wanted;
            nodes.clear();
            for (Mark mark : wanted) nodes.add(new MarkNode(mark));
            marks.getChildren().setAll(nodes);
        }
        double edge = right;
        for (int i = nodes.size() - 1; i >= 0; i--) edge = nodes.get(i).lay(edge, box, u) - 26 * u;
        return edge;
    }

    /** A tick and a word, or a cross and a bold word. */
    private static final class MarkNode extends Group {
        private final Mark mark;
        private final SVGPath shape = new SVGPath();
        private final Words word;

        MarkNode(Mark mark) {
            this.mark = mark;
            word = mark.good() ? new Words(Typeface.REGULAR, "quiet") : new Words(Typeface.BOLD, "warning");
            shape.getStyleClass().add(mark.good() ? "tick" : "cross");
            getChildren().addAll(shape, word);
        }

        double lay(double right, Box box, double u) {
            Box most = new Box(right - 170 * u, box.y(), 170 * u, box.height());
            double left = right - word.placeLarge(mark.word(), most, 24 * u, 2, Words.Side.RIGHT);
            double x = left - 25 * u;
            double y = box.middle();
            shape.setStrokeWidth(3 * u);
            shape.setContent(
                    mark.good()
                            ? "M" + x + " " + y + "l" + 6 * u + " " + 7 * u + "l" + 11 * u + " " + -14 * u
                            : "M" + x + " " + (y - 7 * u) + "l" + 14 * u + " " + 14 * u + "m0 " + -14 * u + "l"
                                    + -14 * u + " " + 14 * u);
            return x;
        }
    }
}
