package fifthform.monitor.chart;

import java.util.ArrayDeque;
import java.util.Deque;

/** Moves labels apart along one axis so that none covers another, each as near to its wish as that allows. */
final class LabelStack {
    private LabelStack() {}

    /**
     * Positions of labels that want to stand at {@code wished}: with the least sum of squared distances from there. Labels
     * that meet form a heap, and heaps that meet one (pool adjacent violators, as in isotonic regression).
     *
     * @param wished shape (n); centres wished for, ascending, pixels
     * @param size shape (n); extent of each label along the axis, pixels
     * @param from lower end of the axis
     * @param to upper end; where the labels do not fit they run past it rather than over each other
     * @return shape (n); centres, ascending
     */
    static double[] spread(double[] wished, double[] size, double from, double to) {
        Deque<Heap> heaps = new ArrayDeque<>();
        for (int i = 0; i < wished.length; i++) {
            Heap heap = new Heap(1, wished[i] - size[i] / 2, size[i]);
            while (!heaps.isEmpty() && heaps.getLast().begin(from, to) + heaps.getLast().extent > heap.begin(from, to))
                heap = heaps.removeLast().with(heap);
            heaps.addLast(heap);
        }
        double[] placed = new double[wished.length];
        int next = 0;
        for (Heap heap : heaps) {
            double at = heap.begin(from, to);
            for (int i = 0; i < heap.count; i++, next++) {
                placed[next] = at + size[next] / 2;
                at += size[next];
            }
        }
        return placed;
    }

    /**
     * Labels that touch.
     *
     * @param wishes sum of where each would have the heap begin
     */
    private record Heap(int count, double wishes, double extent) {
        Heap with(Heap next) {
            return new Heap(count + next.count, wishes + next.wishes - next.count * extent, extent + next.extent);
        }

        double begin(double from, double to) {
            return Math.max(from, Math.min(to - extent, wishes / count));
        }
    }
}
