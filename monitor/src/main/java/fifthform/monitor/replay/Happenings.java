package fifthform.monitor.replay;

import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.model.Sides;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was done, told and wrong in a batch, as three rows in the order of time; from what was recorded then. */
final class Happenings {
    private final Recording recording;
    private final Units units;
    private final Phrases phrases;
    private final List<Happening> all = new ArrayList<>();

    private Happenings(Recording recording, Units units) {
        this.recording = recording;
        this.units = units;
        this.phrases = new Phrases(units, recording.setup().recipe());
    }

    static List<Happening> of(Recording recording, Units units) {
        Happenings happenings = new Happenings(recording, units);
        happenings.did();
        happenings.told();
        happenings.all.sort(Comparator.comparingLong(Happening::nanos));
        return List.copyOf(happenings.all);
    }

    private void did() {
        ActWords words = new ActWords(units);
        for (MakerAction action : recording.did())
            add(action.at(), Happening.Row.DID, action.act(words), Happening.Sign.ACT);
    }

    private void told() {
        Phase phase = Phase.MELT;
        Map<AlarmId, Integer> standing = new EnumMap<>(AlarmId.class);
        for (Recording.Told told : recording.told()) {
            Event event = told.event();
            if (event instanceof Event.PhaseChanged changed) phase = changed.to();
            if (event instanceof CueGiven cue) add(cue, phase);
            if (event instanceof BowlSeen seen && seen.evidence() == BowlSeen.Evidence.INFERRED)
                add(
                        seen.at(),
                        Happening.Row.DID,
                        ReplayText.SEEN_IN_CURVE.say(ActWords.place(seen.place())),
                        Happening.Sign.SEEN);
            if (event instanceof Event.SeedJudged judged)
                add(
                        judged.at(),
                        Happening.Row.TOLD,
                        ReplayText.TOLD_CRYSTALS.say(crystals(judged)),
                        Happening.Sign.WORD);
            if (event instanceof Event.SeedLost lost)
                add(
                        lost.at(),
                        Happening.Row.TOLD,
                        ReplayText.FINDING_SEED_LOST.say(units.withUnit(lost.highestCelsius())),
                        Happening.Sign.WORD);
            if (event instanceof Event.Turned turned)
                add(
                        turned.at(),
                        Happening.Row.TOLD,
                        ReplayText.TOLD_TURNED.say(units.withUnit(turned.celsius())),
                        Happening.Sign.WORD);
            if (event instanceof AlarmRaised raised) standing.put(raised.alarm(), add(raised, standing));
            if (event instanceof Event.AlarmCleared cleared) end(standing.remove(cleared.alarm()), cleared.at());
        }
        for (int open : standing.values()) end(open, recording.at(recording.endNanos()));
    }

    /** As it is said on screens. */
    static String crystals(Event.SeedJudged judged) {
        return InWords.crystals(judged.word(), judged.thick());
    }

    private void add(CueGiven cue, Phase phase) {
        add(cue.at(), Happening.Row.TOLD, words(phrases, cue, phase), Happening.Sign.CUE);
    }

    /** The sentence of a step as it was said then. */
    static String words(Phrases phrases, CueGiven cue, Phase phase) {
        Reason reason = cue.reason().orElse(Reason.by(Reason.Rule.values()[0]));
        return phrases.headline(cue.cue(), new OpenCue(cue.at(), cue.figure(), reason), phase);
    }

    /** One that rises in priority is a mark of its own; the one before ends there. */
    private int add(AlarmRaised raised, Map<AlarmId, Integer> standing) {
        end(standing.get(raised.alarm()), raised.at());
        OptionalDouble figure = raised.figureCelsius();
        add(
                raised.at(),
                Happening.Row.ALARM,
                ReplayText.ALARM_WORDS.say(InWords.of(raised.priority()), phrases.headline(raised.alarm(), figure)),
                Happening.Sign.of(raised.priority(), Sides.of(raised.alarm())));
        return all.size() - 1;
    }

    private void end(Integer index, Instant at) {
        if (index == null) return;
        Happening open = all.get(index);
        all.set(
                index,
                new Happening(open.nanos(), open.row(), open.words(), open.sign(), Optional.of(recording.nanos(at))));
    }

    private void add(Instant at, Happening.Row row, String words, Happening.Sign sign) {
        all.add(new Happening(recording.nanos(at), row, words, sign, Optional.empty()));
    }
}
