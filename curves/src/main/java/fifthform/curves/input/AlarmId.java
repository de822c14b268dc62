package fifthform.curves.input;

import java.util.Locale;
import java.util.Optional;

/** The alarms there are, by the names under which a maker may acknowledge or set them aside. */
public enum AlarmId {
    HEADING_OVER,
    OVER_RANGE,
    NEAR_MELT_OUT,
    MELT_OUT,
    HEADING_UNDER,
    TOO_COOL,
    OVER_COOLED,
    MELT_TOO_HOT,
    BATH_HOT,
    PROBE_FAULT,
    NO_READING,
    READING_DOUBTFUL,
    NOT_RECORDING,
    PROBE_OUT;

    /** The name in files and for scripts: {@code heading-over}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The alarm with this {@link #word()}, if there is one. */
    public static Optional<AlarmId> fromWord(String word) {
        for (AlarmId id : values()) if (id.word().equals(word)) return Optional.of(id);
        return Optional.empty();
    }
}
