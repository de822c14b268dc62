package fifthform.monitor.replay;

import fifthform.curves.crystal.SeedWord;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is drawn of a batch: times in s since its start, temperatures in the maker's unit.
 *
 * @param fromSeconds left end
 * @param toSeconds right end
 * @param bottomShown lower end of the scale
 * @param topShown upper end of the scale
 * @param heights marks of the scale of temperatures
 * @param times marks of the scale of times
 * @param phases the phases, with their words
 * @param bands ranges that are hatched, with their words
 * @param limits lines that must not be passed, with their words
 * @param measured the curve as it was read
 * @param laid curves of other batches, moved so that they match
 * @param forecast where it was going from the moment that is looked at; may be empty
 * @param forecastWords what is forecast; empty where nothing is
 * @param simulated the chosen what-if; may be empty
 * @param crystals what was told of the crystals
 * @param losses moments when the seed was likely lost, with their words
 * @param rows what was done, told and wrong, all of it
 * @param chosen place in {@code rows} of the one stepped to; -1 for none
 * @param notes moments of notes made afterwards, with their words
 * @param nowSeconds the moment that is looked at
 * @param cursorA the first cursor
 * @param cursorB the second cursor
 * @param cursorWords what lies between the two
 * @param unit of the temperatures
 */
public record ReplayChart(
        double fromSeconds,
        double toSeconds,
        double bottomShown,
        double topShown,
        List<Mark> heights,
        List<Mark> times,
        List<Stretch> phases,
        List<Band> bands,
        List<Mark> limits,
        Line measured,
        List<Line> laid,
        List<FanPoint> forecast,
        String forecastWords,
        List<FanPoint> simulated,
        List<CrystalStretch> crystals,
        List<Mark> losses,
        List<Happening> rows,
        int chosen,
        List<Mark> notes,
        double nowSeconds,
        OptionalDouble cursorA,
        OptionalDouble cursorB,
        String cursorWords,
        String unit) {
    public ReplayChart {
        heights = List.copyOf(heights);
        times = List.copyOf(times);
        phases = List.copyOf(phases);
        bands = List.copyOf(bands);
        limits = List.copyOf(limits);
        laid = List.copyOf(laid);
        forecast = List.copyOf(forecast);
        simulated = List.copyOf(simulated);
        crystals = List.copyOf(crystals);
        losses = List.copyOf(losses);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** The same without the moment that is looked at, and what follows from it: for paper. */
    public ReplayChart still() {
        return new ReplayChart(
                fromSeconds,
                toSeconds,
                bottomShown,
                topShown,
                heights,
                times,
                phases,
                bands,
                limits,
                measured,
                laid,
                List.of(),
                "",
                simulated,
                crystals,
                losses,
                rows,
                -1,
                notes,
                Double.NaN,
                cursorA,
                cursorB,
                cursorWords,
                unit);
    }

    /** A place on a scale with what stands there. */
    public record Mark(double at, String words) {}

    /** A stretch of time with its word. */
    public record Stretch(double fromSeconds, double toSeconds, String words) {}

    /** A range of temperatures with its word. */
    public record Band(double lowShown, double highShown, String words) {}

    /** A curve; NaN where it is interrupted. Arrays are not copied and not changed. */
    public record Line(double[] seconds, double[] shown, String words) {}

    /** A point of something that is not measured, with its band. */
    public record FanPoint(double seconds, double shown, double lowShown, double highShown) {}

    /** What was told of the crystals for a while. */
    public record CrystalStretch(double fromSeconds, double toSeconds, SeedWord word, boolean thick, String words) {}
}
