package fifthform.curves.thermocouple;

import fifthform.curves.check.Require;
import fifthform.curves.constants.PackedTable;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;

/**
 * The reference function E(t) of one type, its slope and its inverse. The inverse polynomials are only a first guess,
 * wrong by up to 0.06 K; Newton's method on the direct function finishes, so that both directions agree.
 *
 * <p>Source: NIST Monograph 175 (ITS-90), in {@code its90_direct.csv} and {@code its90_inverse.csv}.
 */
final class ReferenceFunction {
    /** Newton's method ends when a step is smaller than this, K: far above rounding, far below any use. */
    private static final double CLOSE_ENOUGH_KELVIN = 1e-9;

    /** Halving alone needs 41 steps from the widest range to {@link #CLOSE_ENOUGH_KELVIN}. */
    private static final int MOST_STEPS = 100;

    private final List<Piece> pieces;
    private final List<InversePiece> inverse;

    private ReferenceFunction(List<Piece> pieces, List<InversePiece> inverse) {
        this.pieces = List.copyOf(pieces);
        this.inverse = List.copyOf(inverse);
    }

    static ReferenceFunction of(String letter) {
        PackedTable direct = PackedTable.read("thermocouple/its90_direct.csv").where("type", letter);
        List<Piece> pieces = new ArrayList<>();
        for (String low : lows(direct, "range_lo_C")) pieces.add(Piece.of(direct.where("range_lo_C", low)));
        PackedTable back = PackedTable.read("thermocouple/its90_inverse.csv").where("type", letter);
        List<InversePiece> inverse = new ArrayList<>();
        for (String low : lows(back, "range_lo_C")) inverse.add(InversePiece.of(back.where("range_lo_C", low)));
        return new ReferenceFunction(pieces, inverse);
    }

    private static List<String> lows(PackedTable table, String column) {
        return table.rows().stream()
                .map(row -> table.text(row, column))
                .distinct()
                .toList();
    }

    double lowestCelsius() {
        return pieces.get(0).lowCelsius();
    }

    double highestCelsius() {
        return pieces.get(pieces.size() - 1).highCelsius();
    }

    double emfMillivolts(double celsius) {
        return pieceAt(celsius).emfMillivolts(celsius);
    }

    double slopeMillivoltsPerKelvin(double celsius) {
        return pieceAt(celsius).slopeMillivoltsPerKelvin(celsius);
    }

    double celsius(double emfMillivolts) {
        double low = lowestCelsius();
        double high = highestCelsius();
        Require.within(emfMillivolts, emfMillivolts(low), emfMillivolts(high), "emfMillivolts");
        double celsius = Math.min(high, Math.max(low, guessCelsius(emfMillivolts)));
        for (int i = 0; i < MOST_STEPS; i++) {
            double off = emfMillivolts(celsius) - emfMillivolts;
            double step = off / slopeMillivoltsPerKelvin(celsius);
            if (Math.abs(step) < CLOSE_ENOUGH_KELVIN) break;
            // E(t) rises everywhere, so each step also says on which side the answer lies.
            if (off > 0) high = celsius;
            else low = celsius;
            double next = celsius - step;
            celsius = next > low && next < high ? next : (low + high) / 2;
        }
        return celsius;
    }

    /** What the published inverse polynomials say, °C; below the lowest of them its lower end. */
    double guessCelsius(double emfMillivolts) {
        InversePiece found = inverse.get(0);
        if (emfMillivolts < found.lowMillivolts()) return found.lowCelsius();
        for (InversePiece piece : inverse) if (emfMillivolts >= piece.lowMillivolts()) found = piece;
        return found.celsius().value(emfMillivolts);
    }

    private Piece pieceAt(double celsius) {
        Require.within(celsius, lowestCelsius(), highestCelsius(), "celsius");
        // Where two ranges meet, the upper one speaks.
        Piece found = pieces.get(0);
        for (Piece piece : pieces) if (celsius >= piece.lowCelsius()) found = piece;
        return found;
    }

    private static PolynomialFunction polynomial(PackedTable table, String column) {
        return new PolynomialFunction(table.rows().stream()
                .filter(row -> !table.text(row, "order").startsWith("a"))
                .mapToDouble(row -> table.number(row, column))
                .toArray());
    }

    /** One range of E(t): a polynomial and, for K above 0 °C, a bump {@code height · exp(width · (t − centre)²)}. */
    private record Piece(
            double lowCelsius,
            double highCelsius,
            PolynomialFunction emf,
            PolynomialFunction slope,
            double bumpMillivolts,
            double bumpPerSquareKelvin,
            double bumpCentreCelsius) {
        static Piece of(PackedTable table) {
            List<String> first = table.rows().get(0);
            PolynomialFunction emf = polynomial(table, "coefficient_mV");
            return new Piece(
                    table.number(first, "range_lo_C"),
                    table.number(first, "range_hi_C"),
                    emf,
                    emf.polynomialDerivative(),
                    bump(table, "a0"),
                    bump(table, "a1"),
                    bump(table, "a2"));
        }

        private static double bump(PackedTable table, String order) {
            PackedTable term = table.where("order", order);
            return term.rows().isEmpty() ? 0 : term.number(term.rows().get(0), "coefficient_mV");
        }

        double emfMillivolts(double celsius) {
            return emf.value(celsius) + bumpAt(celsius);
        }

        double slopeMillivoltsPerKelvin(double celsius) {
            return slope.value(celsius) + 2 * bumpPerSquareKelvin * (celsius - bumpCentreCelsius) * bumpAt(celsius);
        }

        private double bumpAt(double celsius) {
            double away = celsius - bumpCentreCelsius;
            return bumpMillivolts * StrictMath.exp(bumpPerSquareKelvin * away * away);
        }
    }

    /** One range of the inverse. */
    private record InversePiece(double lowMillivolts, double lowCelsius, PolynomialFunction celsius) {
        static InversePiece of(PackedTable table) {
            List<String> first = table.rows().get(0);
            return new InversePiece(
                    table.number(first, "range_lo_mV"),
                    table.number(first, "range_lo_C"),
                    polynomial(table, "coefficient"));
        }
    }
}
