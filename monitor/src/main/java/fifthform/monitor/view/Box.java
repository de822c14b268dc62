package fifthform.monitor.view;

/** A place on the screen, pixels. */
record Box(double x, double y, double width, double height) {
    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double middle() {
        return y + height / 2;
    }

    /** The same place in pixels, where this one is in design units of {@code unitPixels}. */
    Box times(double unitPixels) {
        return new Box(x * unitPixels, y * unitPixels, width * unitPixels, height * unitPixels);
    }
}
