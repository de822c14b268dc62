package fifthform.monitor.replay;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.SeedJudged;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stood told at one moment: the sum of all events up to it. Made alike from what was told then and from what is
 * computed now, so that the two can be laid side by side.
 *
 * @param phase the phase
 * @param place where the bowl stood, once that was said
 * @param cues the steps that were due
 * @param alarms the alarms that stood
 * @param crystals the word about the seed; empty before the cool step and once it is melted again
 */
record SaidSoFar(
        Phase phase,
        Optional<BowlSeen> place,
        Map<CueId, CueGiven> cues,
        Map<AlarmId, AlarmRaised> alarms,
        Optional<SeedJudged> crystals) {

    static SaidSoFar at(List<Event> events, Instant moment) {
        Folding folding = new Folding();
        for (Event event : events) {
            if (event.at().isAfter(moment)) break;
            event.fold(folding);
        }
        return new SaidSoFar(folding.phase, folding.place, folding.cues, folding.alarms, folding.crystals);
    }

    /** The step named first, as the screen had it. */
    Optional<CueGiven> cue() {
        return cues.values().stream().findFirst();
    }

    private static final class Folding implements Event.Cases<Void> {
        private Phase phase = Phase.MELT;
        private Optional<BowlSeen> place = Optional.empty();
        private final Map<CueId, CueGiven> cues = new EnumMap<>(CueId.class);
        private final Map<AlarmId, AlarmRaised> alarms = new EnumMap<>(AlarmId.class);
        private Optional<SeedJudged> crystals = Optional.empty();

        @Override
        public Void phaseChanged(Event.PhaseChanged event) {
            phase = event.to();
            // While it melts nothing is said of the crystals; no event tells the end of a word.
            if (phase == Phase.MELT) crystals = Optional.empty();
            return null;
        }

        @Override
        public Void bowlSeen(BowlSeen event) {
            place = Optional.of(event);
            return null;
        }

        @Override
        public Void alarmRaised(AlarmRaised event) {
            alarms.put(event.alarm(), event);
            return null;
        }

        @Override
        public Void alarmCleared(Event.AlarmCleared event) {
            alarms.remove(event.alarm());
            return null;
        }

        @Override
        public Void alarmSeen(Event.AlarmSeen event) {
            return null;
        }

        @Override
        public Void cueGiven(CueGiven event) {
            cues.put(event.cue(), event);
            return null;
        }

        @Override
        public Void cueEnded(Event.CueEnded event) {
            cues.remove(event.cue());
            return null;
        }

        @Override
        public Void turned(Event.Turned event) {
            return null;
        }

        @Override
        public Void probeLost(Event.ProbeLost event) {
            return null;
        }

        @Override
        public Void probeBack(Event.ProbeBack event) {
            return null;
        }

        @Override
        public Void readingDoubted(Event.ReadingDoubted event) {
            return null;
        }

        @Override
        public Void lagMeasured(Event.LagMeasured event) {
            return null;
        }

        @Override
        public Void otherCompared(Event.OtherCompared event) {
            return null;
        }

        @Override
        public Void bowlDoubted(Event.BowlDoubted event) {
            return null;
        }

        @Override
        public Void seedJudged(SeedJudged event) {
            crystals = Optional.of(event);
            return null;
        }

        @Override
        public Void seedLost(Event.SeedLost event) {
            return null;
        }
    }
}
