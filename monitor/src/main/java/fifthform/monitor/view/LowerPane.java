package fifthform.monitor.view;

import java.util.function.DoubleSupplier;
import javafx.geometry.Orientation;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** Comparison and lists side by side, or one under the other where there is no room for both. */
final class LowerPane extends Pane {
    /** Narrower than this many letters, the two stand under each other. */
    private static final double WIDE = 75;

    /** Least height of the lists, in letters. */
    private static final double HIGH = 17;

    private final Region compare;
    private final Region lists;
    private final DoubleSupplier em;

    LowerPane(Region compare, Region lists, DoubleSupplier em) {
        this.compare = compare;
        this.lists = lists;
        this.em = em;
        getChildren().addAll(compare, lists);
    }

    private double gap() {
        return 2 * em.getAsDouble();
    }

    private boolean isWide(double width) {
        return width >= WIDE * em.getAsDouble();
    }

    @Override
    protected double computeMinHeight(double width) {
        double wide = width < 0 ? getWidth() : width;
        double least = HIGH * em.getAsDouble();
        return isWide(wide)
                ? Math.max(least, compare.prefHeight((wide - gap()) / 2))
                : compare.prefHeight(wide) + gap() + least;
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        if (isWide(getWidth())) {
            double half = (getWidth() - gap()) / 2;
            compare.resizeRelocate(0, 0, half, getHeight());
            lists.resizeRelocate(half + gap(), 0, half, getHeight());
        } else {
            double first = compare.prefHeight(getWidth());
            compare.resizeRelocate(0, 0, getWidth(), first);
            lists.resizeRelocate(0, first + gap(), getWidth(), Math.max(0, getHeight() - first - gap()));
        }
    }
}
