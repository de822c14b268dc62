package fifthform.simulator.bench;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A {@link Summary} for people, as a table, and for scripts, as named numbers. */
public final class SummaryText {
    private SummaryText() {}

    /** A table of a few lines; every line ends with a line feed. */
    public static String table(Summary summary) {
        StringBuilder text = new StringBuilder();
        line(text, "batches", Long.toString(summary.batches()));
        summary.landed().forEach((landed, share) -> line(text, landed.word(), share(share)));
        line(text, "peak", spread(summary.peakCelsius(), "°C"));
        line(text, "over by", spread(summary.overByKelvin(), "K"));
        line(text, "over for", spread(summary.overSeconds(), "s"));
        line(text, "cues in time", share(summary.answeredInTime()));
        line(text, "answer", spread(summary.answerSeconds(), "s"));
        line(text, "coast error", spread(summary.coastErrorKelvin(), "K"));
        line(text, "lasted", spread(summary.minutes(), "min"));
        return text.toString();
    }

    /**
     * The same for scripts, in a fixed order. A share has three numbers ({@code …_fraction}, {@code …_low},
     * {@code …_high}); a spread has five ({@code …_count}, {@code …}, {@code …_low} and {@code …_high} of its mean's
     * interval, {@code …_p5}, {@code …_p95}). What is not known is not there.
     */
    public static Map<String, Double> numbers(Summary summary) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("batches", (double) summary.batches());
        summary.landed().forEach((landed, share) -> put(numbers, landed.word().replace('-', '_'), share));
        put(numbers, "peak_c", summary.peakCelsius());
        put(numbers, "over_by_k", summary.overByKelvin());
        put(numbers, "over_s", summary.overSeconds());
        put(numbers, "cues_in_time", summary.answeredInTime());
        put(numbers, "answer_s", summary.answerSeconds());
        put(numbers, "coast_error_k", summary.coastErrorKelvin());
        put(numbers, "lasted_min", summary.minutes());
        return numbers;
    }

    private static void put(Map<String, Double> numbers, String name, Share share) {
        numbers.put(name + "_count", (double) share.of());
        share.interval().ifPresent(interval -> {
            numbers.put(name + "_fraction", share.hits() / (double) share.of());
            put(numbers, name, interval);
        });
    }

    private static void put(Map<String, Double> numbers, String name, Spread spread) {
        numbers.put(name + "_count", (double) spread.count());
        if (spread.count() == 0) return;
        numbers.put(name, spread.mean());
        spread.interval().ifPresent(interval -> put(numbers, name, interval));
        numbers.put(name + "_p5", spread.low());
        numbers.put(name + "_p95", spread.high());
    }

    private static void put(Map<String, Double> numbers, String name, Interval interval) {
        numbers.put(name + "_low", interval.low());
        numbers.put(name + "_high", interval.high());
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(String.format(Locale.ROOT, "%-15s %s%n", name, value).replace(System.lineSeparator(), "\n"));
    }

    private static String share(Share share) {
        if (share.of() == 0) return "none to count";
        double percent = 100.0 * share.hits() / share.of();
        Interval interval = share.interval().orElseThrow();
        return String.format(
                Locale.ROOT,
                "%5.1f %%  (%d of %d; 95 %% interval %.1f to %.1f %%)",
                percent,
                share.hits(),
                share.of(),
                100 * interval.low(),
                100 * interval.high());
    }

    private static String spread(Spread spread, String unit) {
        if (spread.count() == 0) return "none to count";
        Optional<String> interval = spread.interval()
                .map(i -> String.format(Locale.ROOT, ", 95 %% interval %.2f to %.2f", i.low(), i.high()));
        return String.format(
                Locale.ROOT,
                "%6.2f %s mean of %d%s; nine of ten within %.2f to %.2f",
                spread.mean(),
                unit,
                spread.count(),
                interval.orElse(""),
                spread.low(),
                spread.high());
    }
}
