package fifthform.simulator.training;

import fifthform.curves.check.Require;

/**
 * Sizes of a network.
 *
 * @param layers recurrent layers
 * @param units of each recurrent layer
 * @param middle units of the dense layer behind them
 */
record Shape(int layers, int units, int middle) {
    Shape {
        Require.within(layers, 1, 8, "layers");
        Require.within(units, 1, 1024, "units");
        Require.within(middle, 1, 1024, "middle");
    }
}
