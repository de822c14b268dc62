package fifthform.monitor.view;

import fifthform.monitor.chart.CurveCanvas;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.Comparison;
import fifthform.monitor.notebook.Comparison.Laid;
import fifthform.monitor.notebook.RowWords;
import fifthform.monitor.notebook.SmallCurve;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.List;

/** Batches as drawings. */
final class Curves {
    private Curves() {}

    static CurveCanvas.Drawing of(BatchRow row, SmallCurve curve, String letter, Units units) {
        return new CurveCanvas.Drawing(
                List.of(new CurveCanvas.Line(curve, 0, letter)),
                row.targets().workLowCelsius(),
                row.targets().workHighCelsius(),
                units);
    }

    /** The working range is drawn where all wanted the same. */
    static CurveCanvas.Drawing of(Comparison comparison, Units units) {
        List<CurveCanvas.Line> lines = new ArrayList<>();
        for (Laid laid : comparison.batches())
            lines.add(new CurveCanvas.Line(laid.curve(), laid.zeroSeconds(), BatchTable.letter(lines.size())));
        boolean alike = comparison.batches().stream()
                        .map(laid -> laid.row().targets())
                        .distinct()
                        .count()
                == 1;
        return new CurveCanvas.Drawing(
                lines,
                alike ? comparison.batches().get(0).row().targets().workLowCelsius() : Double.NaN,
                alike ? comparison.batches().get(0).row().targets().workHighCelsius() : Double.NaN,
                units);
    }

    static String spoken(BatchRow row, Units units) {
        if (row.curve().points() == 0) return NotebookText.CURVE_EMPTY.say();
        return NotebookText.CURVE_SPOKEN.say(
                RowWords.minutes(row),
                RowWords.temperature(row.figures().lowestCelsius(), units),
                RowWords.peak(row, units));
    }
}
