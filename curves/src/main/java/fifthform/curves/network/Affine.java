package fifthform.curves.network;

/**
 * A matrix and a bias. Products are summed column by column, in this order on every machine, so that the last bit is the
 * same everywhere.
 */
final class Affine {
    private final int rows;
    private final double[][] columns;
    private final double[] bias;

    /** @param columns the matrix, column by column; not copied, like {@code bias} */
    Affine(double[][] columns, double[] bias) {
        this.rows = bias.length;
        this.columns = columns;
        this.bias = bias;
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns.length;
    }

    /** {@code W v + b}, where v begins at {@code from} in {@code values}. */
    double[] of(double[] values, int from) {
        double[] sum = bias.clone();
        for (int c = 0; c < columns.length; c++) {
            double factor = values[from + c];
            double[] column = columns[c];
            for (int r = 0; r < rows; r++) sum[r] += column[r] * factor;
        }
        return sum;
    }
}
