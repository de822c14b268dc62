package fifthform.curves.network;

import java.util.List;

/** One trained network: recurrent layers, a layer of tanh, and a linear one that answers. */
record Member(List<Gru> layers, Affine dense, Affine out) {
    Member {
        layers = List.copyOf(layers);
    }

    int memorySize() {
        return layers.stream().mapToInt(Gru::units).sum();
    }

    /**
     * One step.
     *
     * @param memory of all members; this one's begins at {@code from}
     * @param after takes this one's memory after the step, at the same place
     * @return the answers
     */
    double[] step(double[] inputs, double[] memory, double[] after, int from) {
        double[] value = inputs;
        int at = from;
        for (Gru layer : layers) {
            value = layer.step(value, memory, at);
            System.arraycopy(value, 0, after, at, value.length);
            at += layer.units();
        }
        double[] middle = dense.of(value, 0);
        for (int i = 0; i < middle.length; i++) middle[i] = StrictMath.tanh(middle[i]);
        return out.of(middle, 0);
    }
}
