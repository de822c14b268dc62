package fifthform.monitor.view;

import fifthform.monitor.chart.ReplayCanvas;
import fifthform.monitor.chart.ReplayPlot;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.texts.ReplayText;
import javafx.scene.control.Slider;
import javafx.scene.layout.Pane;
import javafx.scene.text.Font;

/** The chart and, on the same scale of time, the slider under it. */
final class TimePane extends Pane {
    private static final double NANOS = 1e9;
    private static final double WHEEL_ZOOM = 0.8;

    private final ReplayCanvas canvas = new ReplayCanvas();
    private final Slider slider = new Slider();
    private final ReplayDesk desk;
    private boolean showing;

    TimePane(ReplayDesk desk) {
        this.desk = desk;
        canvas.setId("chart");
        slider.setId("time");
        slider.setFocusTraversable(true);
        getChildren().addAll(canvas, slider);
        slider.valueProperty().addListener((value, before, now) -> {
            if (!showing) desk.seek(Math.round(now.doubleValue() * NANOS));
        });
        canvas.setOnMousePressed(event -> go(event.getX()));
        canvas.setOnMouseDragged(event -> go(event.getX()));
        setOnScroll(event -> {
            if (event.getDeltaY() == 0) return;
            double factor = event.getDeltaY() > 0 ? WHEEL_ZOOM : 1 / WHEEL_ZOOM;
            desk.zoom(factor, Math.round(canvas.secondsAt(event.getX()) * NANOS));
            event.consume();
        });
    }

    private void go(double x) {
        slider.requestFocus();
        desk.seek(Math.round(canvas.secondsAt(x) * NANOS));
    }

    Slider slider() {
        return slider;
    }

    /** Pixels the curve is wide: so many columns are worth having. */
    int columns() {
        return (int) Math.max(50, Math.ceil(canvas.plot().width()));
    }

    void show(ReplayPicture picture) {
        canvas.show(picture.chart());
        canvas.setAccessibleText(ReplayText.CHART_SPOKEN.say(
                picture.headline(), picture.span(), picture.chart().cursorWords()));
        showing = true;
        slider.setMin(picture.chart().fromSeconds());
        slider.setMax(picture.chart().toSeconds());
        slider.setBlockIncrement(5);
        slider.setValue(picture.chart().nowSeconds());
        slider.setAccessibleText(ReplayText.SLIDER.say(picture.clock()));
        showing = false;
    }

    void wear(Theme theme) {
        canvas.colour(theme.palette());
    }

    /** Takes letters of this size. */
    void letters(double pixels) {
        setMinHeight(ReplayPlot.leastHeight(pixels) + 2 * pixels);
        setPrefHeight(ReplayPlot.leastHeight(pixels) + 2 * pixels);
        em = pixels;
        requestLayout();
    }

    private double em = Font.getDefault().getSize();

    @Override
    protected void layoutChildren() {
        double high = em * 1.5;
        // The slider overlaps the scale of times' upper edge, so that its knob hangs on the line of the moment.
        ReplayPlot plot = new ReplayPlot(getWidth(), Math.max(1, getHeight() - high), em);
        canvas.size(plot);
        canvas.relocate(0, 0);
        double knob = em * 1.3;
        slider.resizeRelocate(plot.left() - knob / 2, getHeight() - high, plot.width() + knob, high);
    }
}
