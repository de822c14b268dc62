package fifthform.monitor.chart;

/** Moves labels apart along one axis so that none covers another, each as near to its wish as that allows. */
final class LabelStack {
    private LabelStack() {}

    /**
     * Positions of labels that want to stand at {@code wished}.
     *
     * @param wished shape (n); centres wished for, ascending, pixels
     * @param size shape (n); extent of each label along the axis, pixels
     * @param from lower end of the axis
     * @param to upper end; where the labels do not fit they run past it rather than over each other
     * @return shape (n); centres, ascending
     */
    static double[] spread(double[] wished, double[] size, double from, double to) {
        double[] placed = wished.clone();
        double free = to;
        for (int i = placed.length - 1; i >= 0; i--) {
            placed[i] = Math.min(placed[i], free - size[i] / 2);
            free = placed[i] - size[i] / 2;
        }
        free = from;
        for (int i = 0; i < placed.length; i++) {
            placed[i] = Math.max(placed[i], free + size[i] / 2);
            free = placed[i] + size[i] / 2;
        }
        return placed;
    }
}
