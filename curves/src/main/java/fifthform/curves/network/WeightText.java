package fifthform.curves.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;

/**
 * Weights as text:
 *
 * <pre>
 * # key = value          provenance, any number of lines, anywhere
 * network                begins a network; there may be several, whose answers are averaged
 * gru1.Wz 32 26          a matrix: name, rows, columns; then its rows, numbers apart by spaces
 * …
 * </pre>
 *
 * A network has for each recurrent layer N = 1, 2, … {@code gruN.Wz gruN.bz gruN.Uz gruN.Wr gruN.br gruN.Ur gruN.Wn
 * gruN.bn gruN.Un gruN.cn}, then {@code dense.W dense.b out.W out.b}, in any order. A bias is one row. The names are
 * those of {@link Gru}.
 */
final class WeightText {
    private final String source;
    private final List<String> provenance = new ArrayList<>();
    private final List<Map<String, double[][]>> networks = new ArrayList<>();

    private WeightText(String source) {
        this.source = source;
    }

    /** @param source what the text is called in complaints */
    static Network read(List<String> lines, String source) {
        WeightText text = new WeightText(source);
        int next = 0;
        while (next < lines.size()) next = text.take(lines, next);
        List<Member> members = text.networks.stream().map(text::member).toList();
        if (members.isEmpty()) throw text.fault("holds no network");
        return new Network(members, text.provenance);
    }

    /** Takes what begins at this line and answers with the line behind it. */
    private int take(List<String> lines, int at) {
        String line = lines.get(at).strip();
        if (line.isEmpty()) return at + 1;
        if (line.startsWith("#")) {
            provenance.add(line.substring(1).strip());
            return at + 1;
        }
        if (line.equals("network")) {
            networks.add(new LinkedHashMap<>());
            return at + 1;
        }
        String[] head = line.split("\\s+");
        if (head.length != 3) throw fault(at, "wants NAME ROWS COLUMNS, found '" + line + "'");
        if (networks.isEmpty()) throw fault(at, "wants the line 'network' before the first matrix");
        int rows = size(head[1], at);
        int columns = size(head[2], at);
        double[][] matrix = new double[rows][];
        for (int r = 0; r < rows; r++) matrix[r] = row(lines, at + 1 + r, columns, head[0]);
        if (last().put(head[0], matrix) != null) throw fault(at, "has " + head[0] + " a second time");
        return at + 1 + rows;
    }

    private Map<String, double[][]> last() {
        return networks.get(networks.size() - 1);
    }

    private int size(String word, int at) {
        if (word.matches("[1-9][0-9]{0,4}")) return Integer.parseInt(word);
        throw fault(at, "wants a size from 1 to 99999, found '" + word + "'");
    }

    private double[] row(List<String> lines, int at, int columns, String name) {
        if (at >= lines.size()) throw fault(at, "ends within " + name);
        StringTokenizer words = new StringTokenizer(lines.get(at));
        if (words.countTokens() != columns) {
            throw fault(at, "wants " + columns + " numbers in a row of " + name + ", found " + words.countTokens());
        }
        double[] row = new double[columns];
        for (int c = 0; c < columns; c++) row[c] = number(words.nextToken(), at);
        return row;
    }

    private double number(String word, int at) {
        try {
            double value = Double.parseDouble(word);
            if (Double.isFinite(value)) return value;
        } catch (NumberFormatException e) {
            throw fault(at, "wants a number, found '" + word + "'");
        }
        throw fault(at, "wants a finite number, found '" + word + "'");
    }

    private Member member(Map<String, double[][]> matrices) {
        List<Gru> layers = new ArrayList<>();
        int inputs = Blocks.INPUTS;
        while (layers.isEmpty() || matrices.containsKey("gru" + (layers.size() + 1) + ".Wz")) {
            Gru layer = gru(matrices, "gru" + (layers.size() + 1), inputs);
            layers.add(layer);
            inputs = layer.units();
        }
        int middle = wanted(matrices, "dense.b")[0].length;
        Affine dense = affine(matrices, "dense.W", "dense.b", middle, inputs);
        Affine out = affine(matrices, "out.W", "out.b", Network.OUTPUTS, middle);
        int known = 10 * layers.size() + 4;
        if (matrices.size() != known) throw fault("holds matrices that no layer wants: " + matrices.keySet());
        return new Member(layers, dense, out);
    }

    private Gru gru(Map<String, double[][]> m, String name, int inputs) {
        int units = wanted(m, name + ".bz")[0].length;
        return new Gru(
                affine(m, name + ".Wz", name + ".bz", units, inputs),
                linear(m, name + ".Uz", units),
                affine(m, name + ".Wr", name + ".br", units, inputs),
                linear(m, name + ".Ur", units),
                affine(m, name + ".Wn", name + ".bn", units, inputs),
                affine(m, name + ".Un", name + ".cn", units, units));
    }

    private Affine linear(Map<String, double[][]> matrices, String name, int units) {
        return new Affine(columns(matrices, name, units, units), new double[units]);
    }

    private Affine affine(Map<String, double[][]> matrices, String weights, String bias, int rows, int columns) {
        double[][] b = sized(matrices, bias, 1, rows);
        return new Affine(columns(matrices, weights, rows, columns), b[0]);
    }

    private double[][] columns(Map<String, double[][]> matrices, String name, int rows, int columns) {
        double[][] byRow = sized(matrices, name, rows, columns);
        double[][] byColumn = new double[columns][rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) byColumn[c][r] = byRow[r][c];
        }
        return byColumn;
    }

    private double[][] sized(Map<String, double[][]> matrices, String name, int rows, int columns) {
        double[][] m = wanted(matrices, name);
        if (m.length == rows && m[0].length == columns) return m;
        throw fault(name + " must be " + rows + " × " + columns + ", was " + m.length + " × " + m[0].length);
    }

    private double[][] wanted(Map<String, double[][]> matrices, String name) {
        double[][] matrix = matrices.get(name);
        if (matrix == null) throw fault("lacks the matrix " + name);
        return matrix;
    }

    private IllegalArgumentException fault(String what) {
        return new IllegalArgumentException(source + " " + what);
    }

    private IllegalArgumentException fault(int at, String what) {
        return new IllegalArgumentException(source + " line " + (at + 1) + " " + what);
    }
}
