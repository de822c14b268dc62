package fifthform.monitor.app;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.model.Spans;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.EventCodec;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.LiveText;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Compares what the maker was told then with what the engine says now, line by line, to the byte. */
final class Told implements SessionRecord {
    /** How the lines about the crystals begin to differ from all others. */
    private static final String OF_THE_SEED = "\"e\":\"seed-";

    private final List<String> then;
    private final List<String> now = new ArrayList<>();
    private final List<Long> sequences = new ArrayList<>();
    private final EventCodec codec;
    private final Instant start;
    private final boolean isCutOff;
    private final long lastSequence;

    Told(Session session) {
        this.then = session.told().map(Entry.Told::json).toList();
        this.start = session.header().start();
        this.codec = new EventCodec(start);
        this.isCutOff = !session.isClosed();
        this.lastSequence = session.nextSequence() - 1;
    }

    @Override
    public void input(Recorded recorded) {}

    @Override
    public void event(long sequence, Event event) {
        now.add(codec.write(sequence, event));
        sequences.add(sequence);
    }

    @Override
    public void note(Instant at, String about, String text) {}

    @Override
    public void force() {}

    boolean differs() {
        return !then.equals(now) && !isCutOffBeforeTheLast();
    }

    /** Killed between a reading and what it led to: the reading is there, what was about to be told is not. */
    private boolean isCutOffBeforeTheLast() {
        return isCutOff
                && then.size() < now.size()
                && then.equals(now.subList(0, then.size()))
                && sequences.subList(then.size(), now.size()).stream().allMatch(s -> s == lastSequence);
    }

    /** What was said of the crystals then beside what is said now; an older session was told nothing of them. */
    List<String> crystals() {
        List<String> before = crystals(then);
        List<String> today = crystals(now);
        if (before.isEmpty() && today.isEmpty()) return List.of();
        String first = LiveText.OF_THE_CRYSTALS_TOLD_THEN.say(joined(before));
        return before.equals(today)
                ? List.of(LiveText.COMPUTED_NOW_THE_SAME.say(first))
                : List.of(first + ".", LiveText.OF_THE_CRYSTALS_COMPUTED_NOW.say(joined(today)));
    }

    private static String joined(List<String> words) {
        return words.isEmpty() ? LiveText.NOTHING.say() : String.join(", ", words);
    }

    private List<String> crystals(List<String> events) {
        List<String> words = new ArrayList<>();
        for (String line : events) {
            if (!line.contains(OF_THE_SEED)) continue;
            try {
                Event event = codec.read(line);
                String at = Spans.words(Duration.between(start, event.at()));
                if (event instanceof Event.SeedJudged judged)
                    words.add(LiveText.AT.say(InWords.crystals(judged.word(), judged.thick()), at));
                if (event instanceof Event.SeedLost) words.add(LiveText.SEED_LOST_AT.say(at));
            } catch (UnreadableJson newer) {
                words.add(LiveText.SOMETHING_THAT_ONLY_A_NEWER.say());
            }
        }
        return words;
    }

    /** Says whether all is as it was, and if not, where it first differs. */
    void report(PrintWriter out) {
        if (!differs()) {
            out.println(LiveText.TOLD_THEN_AND_COMPUTED_NOW_THE.say(then.size()));
            if (then.size() < now.size())
                out.println(LiveText.IT_WAS_CUT_OFF_WHILE_ITS.say(now.subList(then.size(), now.size())));
            return;
        }
        int i = 0;
        while (i < then.size() && i < now.size() && then.get(i).equals(now.get(i))) i++;
        out.println(LiveText.TOLD_THEN_AND_COMPUTED_NOW.say(i + 1, then.size(), now.size()));
        out.println(LiveText.THEN.say(i < then.size() ? then.get(i) : LiveText.NOTHING.say()));
        out.println(LiveText.NOW_TOLD.say(i < now.size() ? now.get(i) : LiveText.NOTHING.say()));
    }
}
