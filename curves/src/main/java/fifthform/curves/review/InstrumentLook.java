package fifthform.curves.review;

import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The times in which the program could not see the chocolate.
 *
 * @param open what goes on, and since when
 * @param past what is over, oldest first
 */
record InstrumentLook(Map<AlarmId, Since> open, List<Cause> past) {
    static final InstrumentLook NONE = new InstrumentLook(new EnumMap<>(AlarmId.class), List.of());

    private static final Map<AlarmId, Kind> KINDS = new EnumMap<>(AlarmId.class);

    static {
        KINDS.put(AlarmId.PROBE_OUT, Kind.PROBE_OUT);
        KINDS.put(AlarmId.PROBE_FAULT, Kind.PROBE_FAULTY);
        KINDS.put(AlarmId.NO_READING, Kind.READINGS_MISSING);
        KINDS.put(AlarmId.READING_DOUBTFUL, Kind.READINGS_DOUBTFUL);
    }

    private static final int MOST = 24;

    /** Less than this is a hiccup of the line. Own choice. */
    private static final Duration BRIEF = Duration.ofSeconds(8);

    /** A tip that touches the wall, a stir: what is doubted for less cost nothing. Own choice. */
    private static final Duration BRIEF_DOUBT = Duration.ofSeconds(30);

    record Since(Instant at, Phase phase) {}

    InstrumentLook with(Glimpse g) {
        InstrumentLook here = this;
        for (Map.Entry<AlarmId, Kind> each : KINDS.entrySet()) {
            AlarmId id = each.getKey();
            boolean known = here.open.containsKey(id);
            // Some alarms stand until they are seen; what they tell of is over with the next good reading.
            boolean blind = id == AlarmId.PROBE_FAULT || id == AlarmId.NO_READING;
            boolean over = !g.after.alarms().of(id).state().isStanding() || blind && g.celsius.isPresent();
            if (!known && g.raised(id) && !over) here = here.begun(id, g);
            else if (known && over) here = here.over(id, each.getValue(), g.now);
        }
        return here;
    }

    private InstrumentLook begun(AlarmId id, Glimpse g) {
        EnumMap<AlarmId, Since> more = new EnumMap<>(AlarmId.class);
        more.putAll(open);
        Instant since = id == AlarmId.PROBE_OUT ? g.after.probeOutSince().orElse(g.now) : g.now;
        more.put(id, new Since(since, g.phase));
        return new InstrumentLook(more, past);
    }

    private InstrumentLook over(AlarmId id, Kind kind, Instant now) {
        EnumMap<AlarmId, Since> fewer = new EnumMap<>(AlarmId.class);
        fewer.putAll(open);
        Since since = fewer.remove(id);
        Cause cause = cause(id, kind, since, now);
        if (past.size() >= MOST || isBrief(cause)) {
            return new InstrumentLook(fewer, past);
        }
        List<Cause> all = new ArrayList<>(past);
        all.add(cause);
        return new InstrumentLook(fewer, List.copyOf(all));
    }

    private static boolean isBrief(Cause cause) {
        Duration least = cause.kind() == Kind.READINGS_DOUBTFUL ? BRIEF_DOUBT : BRIEF;
        return cause.lasted().orElseThrow().compareTo(least) < 0;
    }

    private static Cause cause(AlarmId id, Kind kind, Since since, Instant now) {
        return Cause.of(kind, since.phase(), since.at())
                .lasting(Duration.between(since.at(), now))
                .told(id.word(), since.at());
    }

    List<Cause> causes(Instant now) {
        List<Cause> all = new ArrayList<>(past);
        open.forEach((id, since) -> {
            Cause cause = cause(id, KINDS.get(id), since, now);
            if (!isBrief(cause)) all.add(cause);
        });
        return all;
    }
}
