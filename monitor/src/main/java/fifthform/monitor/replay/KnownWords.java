package fifthform.monitor.replay;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Recorded;
import fifthform.monitor.model.ClosingLine;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Findings in the words that a session's end and its alarms have anyway. */
public final class KnownWords implements Findings {
    private final Units units;
    private final List<AlarmRaised> raised = new ArrayList<>();

    public KnownWords(Units units) {
        this.units = units;
    }

    @Override
    public void follow(Recorded input, SessionSnapshot now, List<Event> events) {
        for (Event event : events) if (event instanceof AlarmRaised alarm) raised.add(alarm);
    }

    @Override
    public String about() {
        return ReplayText.HEADLINE_WORST.say();
    }

    @Override
    public List<Finding> found(Recording recording, SessionSnapshot last) {
        List<Finding> all = new ArrayList<>(said(last.trace().losses(), raised, recording, units));
        List<String> end = SurvivedWords.closing(last, units, recording.header().zone());
        all.add(new Finding(
                Optional.empty(), ClosingLine.of(last.setup(), last.tally(), units), String.join(" ", end)));
        return all;
    }

    /** What was told then, before anything is computed again. */
    static List<Finding> told(Recording recording, Units units) {
        List<Event> events =
                recording.told().stream().map(Recording.Told::event).toList();
        List<Finding> said = said(of(events, Event.SeedLost.class), of(events, AlarmRaised.class), recording, units);
        return said.isEmpty() ? List.of(calm()) : said;
    }

    private static <E> List<E> of(List<Event> events, Class<E> kind) {
        return events.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Lost seed before all alarms, then the worst alarm, then the others in the order of time, each once. */
    private static List<Finding> said(
            List<Event.SeedLost> losses, List<AlarmRaised> alarms, Recording recording, Units units) {
        Stream<Finding> lost = losses.stream().limit(1).map(l -> lost(l, units));
        List<AlarmRaised> needed =
                alarms.stream().filter(a -> a.priority() != Priority.ADVISE).toList();
        Optional<AlarmRaised> worst = needed.stream().min(Comparator.comparing(KnownWords::rank));
        List<AlarmId> named = new ArrayList<>();
        Stream<Finding> others = Stream.concat(worst.stream(), needed.stream())
                .filter(a -> named.contains(a.alarm()) ? false : named.add(a.alarm()))
                .map(a -> alarm(
                        a,
                        worst.equals(Optional.of(a)) ? headline(a, recording, units) : AlarmNames.of(a.alarm()),
                        recording,
                        units));
        return Stream.concat(lost, others).toList();
    }

    /** Melt-out before its guard before all else; of the others urgent before prompt, and the earlier one. */
    private static int rank(AlarmRaised raised) {
        int kind = switch (raised.alarm()) {
            case MELT_OUT -> 0;
            case NEAR_MELT_OUT -> 1;
            default -> 2;
        };
        return 10 * kind - raised.priority().ordinal();
    }

    private static Finding lost(Event.SeedLost lost, Units units) {
        return new Finding(
                Optional.of(lost.at()),
                ReplayText.FINDING_SEED_LOST.say(units.withUnit(lost.highestCelsius())),
                ReplayText.FINDING_SEED_LOST_WHY.say(
                        SurvivedWords.percentOfFat(lost.before().middle()),
                        SurvivedWords.percentOfFat(lost.left().middle())));
    }

    private static Finding alarm(AlarmRaised raised, String name, Recording recording, Units units) {
        Phrases phrases = new Phrases(units, recording.setup().recipe());
        String figure = raised.figureCelsius().isPresent()
                ? units.withUnit(raised.figureCelsius().getAsDouble())
                : "";
        return new Finding(
                Optional.of(raised.at()),
                name,
                ReplayText.FINDING_ALARM.say(
                        InWords.of(raised.priority()),
                        phrases.headline(raised.alarm(), raised.figureCelsius()),
                        figure));
    }

    /** What it was, and where it is about heat how far that went. */
    private static String headline(AlarmRaised raised, Recording recording, Units units) {
        boolean heat = switch (raised.alarm()) {
            case MELT_OUT, NEAR_MELT_OUT, OVER_RANGE, HEADING_OVER -> true;
            default -> false;
        };
        double highest = recording.bowl().range(recording.nanos(raised.at()), Long.MAX_VALUE)[1];
        String name = AlarmNames.of(raised.alarm());
        return heat && !Double.isNaN(highest) ? ReplayText.FINDING_AT_MOST.say(name, units.withUnit(highest)) : name;
    }

    private static Finding calm() {
        return new Finding(Optional.empty(), ReplayText.FINDING_CALM.say(), "");
    }
}
