package fifthform.monitor.analyse;

import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Forecast;
import fifthform.monitor.json.JsonLine;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What the engine makes of a batch at one reading, as a line of JSON. */
final class ReadingLine {
    private static final int PLACES = 3;

    private ReadingLine() {}

    /**
     * The line.
     *
     * @param timeText the reading's time as the file writes it
     */
    static String of(String session, String timeText, State state) {
        JsonLine line = new JsonLine()
                .text("session", session)
                .raw("time_s", timeText)
                .text("phase", state.batch().phase().word());
        Optional<Estimate> estimate = state.estimate();
        number(line, "estimate_c", estimate, Estimate::chocolateCelsius);
        number(line, "sigma_k", estimate, Estimate::bulkSigmaKelvin);
        number(line, "rate_k_per_min", estimate, Estimate::rateKelvinPerMinute);
        Optional<Forecast> forecast = state.forecast();
        number(line, "peak_if_lifted_c", forecast, f -> f.ifLifted().celsius());
        number(line, "peak_lower_c", forecast, f -> f.ifLifted().lowerCelsius());
        number(line, "peak_upper_c", forecast, f -> f.ifLifted().upperCelsius());
        number(line, "peak_if_left_c", forecast, f -> f.ifLeft().celsius());
        Optional<String> crystals =
                state.crystals().flatMap(c -> c.watch().spoken().inData());
        if (crystals.isPresent()) line.text("crystals", crystals.get());
        else line.raw("crystals", "null");
        return line.raw("alarms", words(state.alarms().standing().stream().map(id -> id.word())))
                .raw("cues", words(state.cues().open().keySet().stream().map(id -> id.word())))
                .end();
    }

    private static <T> void number(JsonLine line, String key, Optional<T> from, ToDoubleFunction<T> value) {
        if (from.isPresent()) line.number(key, value.applyAsDouble(from.get()), PLACES);
        else line.raw(key, "null");
    }

    private static String words(java.util.stream.Stream<String> words) {
        return words.map(w -> "\"" + w + "\"").collect(Collectors.joining(",", "[", "]"));
    }
}
