package fifthform.monitor.model;

import fifthform.curves.crystal.SeedWord;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.WatchText;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Everything the Watch screen shows at one moment, in words and numbers. Window, terminal and plain lines show the
 * same picture. Temperatures named {@code …Shown} are in the maker's unit, ready to be drawn against {@link Ladder}'s
 * or {@link Trace}'s own scale.
 *
 * @param kitchen whether this is practice; shown all the time
 * @param heading phase and times, for example {@code rewarm · 3 min · 41 min of the batch}
 * @param subject chocolate, amount and bowl, for example {@code dark, 1 kg, steel bowl}
 * @param marks sound, saved, probe
 * @param clock time of day
 * @param band what to do now
 * @param numeral the temperature
 * @param rate the rate in words, for example {@code rising 1.0 °C a minute}; empty where unknown
 * @param outlooks one to three lines on what will happen
 * @param ladder limits to scale
 * @param trace the curve and its forecast
 * @param tiles slow values
 * @param foot a quiet line under the trace
 * @param alarms all that are not quiet, most urgent first
 * @param keys what the keys do
 * @param undo what the last key did, while it can be undone
 * @param banner a standing notice, for example that this is practice and how to use a real probe; or what the maker asked
 * @param notice which of the two it is
 * @param why the reason of what is in the band, in sentences with figures; for who asks
 * @param crystals what is said of the crystals
 * @param asked keys that the screen asks for just now, though they are none of its usual row
 */
public record WatchPicture(
        Kitchen kitchen,
        String heading,
        String subject,
        List<Mark> marks,
        String clock,
        Band band,
        Numeral numeral,
        String rate,
        List<Outlook> outlooks,
        Ladder ladder,
        Trace trace,
        List<Tile> tiles,
        String foot,
        List<AlarmRow> alarms,
        String keys,
        Optional<String> undo,
        Optional<String> banner,
        Notice notice,
        List<String> why,
        Crystals crystals,
        Set<Key> asked) {
    private static final List<Key> LOOKS = List.of(Key.THEME, Key.FULL_SCREEN);

    /** What the banner holds. */
    public enum Notice {
        /** What stands there anyhow; alarms need its room more. */
        STANDING,
        /** What the maker asked for a moment ago: it stays, whatever else there is. */
        ASKED
    }

    /** Whose bowl it is. */
    public enum Kitchen {
        /** The maker's own. */
        REAL,
        /** A simulated one, in the hands of a simulated maker. */
        SIMULATED,
        /** A simulated one, in the hands of whoever sits at the keys. */
        TRAINING
    }

    public WatchPicture {
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(subject, "subject");
        marks = List.copyOf(marks);
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(numeral, "numeral");
        Objects.requireNonNull(rate, "rate");
        outlooks = List.copyOf(outlooks);
        Objects.requireNonNull(ladder, "ladder");
        Objects.requireNonNull(trace, "trace");
        tiles = List.copyOf(tiles);
        Objects.requireNonNull(foot, "foot");
        alarms = List.copyOf(alarms);
        Objects.requireNonNull(keys, "keys");
        Objects.requireNonNull(undo, "undo");
        Objects.requireNonNull(banner, "banner");
        Objects.requireNonNull(notice, "notice");
        why = List.copyOf(why);
        Objects.requireNonNull(crystals, "crystals");
        asked = Set.copyOf(asked);
    }

    /** A picture that asks for no key. */
    public WatchPicture(
            Kitchen kitchen,
            String heading,
            String subject,
            List<Mark> marks,
            String clock,
            Band band,
            Numeral numeral,
            String rate,
            List<Outlook> outlooks,
            Ladder ladder,
            Trace trace,
            List<Tile> tiles,
            String foot,
            List<AlarmRow> alarms,
            String keys,
            Optional<String> undo,
            Optional<String> banner,
            Notice notice,
            List<String> why,
            Crystals crystals) {
        this(
                kitchen, heading, subject, marks, clock, band, numeral, rate, outlooks, ladder, trace, tiles, foot,
                alarms, keys, undo, banner, notice, why, crystals, Set.of());
    }

    /**
     * Whether this key stands in the row of keys: usually, or since it is asked for. Each that is asked for takes the place
     * of one that only changes how the screen looks, so that all stay as wide as a finger.
     */
    public boolean isInTheRow(Key key) {
        if (asked.contains(key)) return true;
        long added = asked.stream().filter(one -> !one.isInTheRow(kitchen)).count();
        int first = LOOKS.indexOf(key);
        return key.isInTheRow(kitchen) && (first < 0 || first >= added);
    }

    /** The same with what the maker asked for in the place of the notice. */
    public WatchPicture answering(String words) {
        return with(kitchen, band, alarms, undo, Optional.of(words), Notice.ASKED);
    }

    /** The same moment in somebody's hands: another band, and other words around it. */
    public WatchPicture with(
            Kitchen whose,
            Band other,
            List<AlarmRow> rows,
            Optional<String> undoing,
            Optional<String> words,
            Notice which) {
        return new WatchPicture(
                whose, heading, subject, marks, clock, other, numeral, rate, outlooks, ladder, trace, tiles, foot, rows,
                keys, undoing, words, which, why, crystals, asked);
    }

    /** Whether nothing of it was measured. */
    public boolean simulated() {
        return kitchen != Kitchen.REAL;
    }

    /** How loud something on the screen is; drawn as shape, word and colour together. */
    public enum Tone {
        /** Nothing due: plain ink, no fill. */
        CALM,
        /** A step is due: ink fill, reversed text. */
        CUE,
        /** Outline only. */
        ADVISE,
        /** Yellow fill, triangle. */
        PROMPT,
        /** Red fill, octagon. */
        URGENT
    }

    /** Which way a triangle points. */
    public enum Direction {
        UP,
        DOWN,
        NONE
    }

    /**
     * What is said of the crystals.
     *
     * @param word the word, for example {@code enough, thick}; empty before the cool step
     * @param limits how far that goes; beside the word wherever it stands
     * @param why the range in figures, the stirring it rests on and what makes it doubtful, in sentences; for who asks
     * @param question what the program would like to know, asked quietly; empty where it knows
     * @param survived what an overshoot left alive and what to do about it; empty where there is nothing to tell
     */
    public record Crystals(String word, String limits, List<String> why, String question, String survived) {
        /** Before the cool step. */
        public static final Crystals NONE = new Crystals("", "", List.of(), "", "");

        public Crystals {
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(limits, "limits");
            why = List.copyOf(why);
            Objects.requireNonNull(question, "question");
            Objects.requireNonNull(survived, "survived");
        }

        /** Whether a word is said. */
        public boolean isSaid() {
            return !word.isEmpty();
        }

        /** Word and limits in one line, the same on every screen. */
        public String line() {
            return isSaid() ? LABEL.say() + ": " + word + " · " + limits : "";
        }

        /** What stands before the word. */
        public static final WatchText LABEL = WatchText.CRYSTALS;
    }

    /** A stretch of the trace through which one word was said of the crystals. */
    public record Stretch(Instant from, Instant to, SeedWord word, boolean thick) {
        /** The word on the strip. */
        public String words() {
            return InWords.crystals(word, thick);
        }
    }

    /** A small standing mark, for example that readings are saved. */
    public record Mark(String word, boolean good) {}

    /**
     * What to do now.
     *
     * @param headline one imperative line
     * @param aside why, or what else; may be empty
     * @param blinking whether the symbol blinks: an alarm nobody has seen yet
     */
    public record Band(Tone tone, Direction direction, String headline, String aside, boolean blinking) {}

    /**
     * The temperature, or the last one struck through with its age.
     *
     * @param whole degrees and first decimal, for example {@code 30.6}; {@code –} before the first reading
     * @param hundredths second decimal; empty where the probe does not resolve it
     * @param unit {@code °C} or {@code °F}
     * @param stale the age in words, where the number is not good any more
     * @param doubt uncertainty in words, for example {@code ±1.0 °C, probe not checked}; may be empty
     * @param trust what that uncertainty is made of, and how slow the tip is, in sentences; may be empty
     */
    public record Numeral(
            String whole, String hundredths, String unit, Optional<String> stale, String doubt, List<String> trust) {
        public Numeral {
            trust = List.copyOf(trust);
        }
    }

    /** One line of outlook, for example {@code lifted now, it turns at · 31.1 · 30.8 to 31.5, in 50 s}. */
    public record Outlook(String label, String value, String detail) {}

    /** A limit on the ladder and the trace. */
    public record Limit(double atShown, String name, String detail, Weight weight) {
        /** How it is drawn. */
        public enum Weight {
            STRONG,
            THIN
        }
    }

    /**
     * The ladder of limits, to scale.
     *
     * @param bottomShown lower end of the scale
     * @param topShown upper end of the scale
     * @param stepShown distance between labelled rungs
     * @param bandLowShown lower end of the phase's target range
     * @param bandHighShown upper end of the phase's target range
     * @param bandName name of the target range, for example {@code working}
     * @param bandDetail its figures, for example {@code 31 to 32}
     * @param nowShown where the chocolate is; may lie outside the scale
     * @param peakShown where it will turn if lifted now
     * @param peakLowShown lower end of that forecast's band
     * @param peakHighShown upper end of that forecast's band
     */
    public record Ladder(
            double bottomShown,
            double topShown,
            double stepShown,
            double bandLowShown,
            double bandHighShown,
            String bandName,
            String bandDetail,
            List<Limit> limits,
            OptionalDouble nowShown,
            OptionalDouble peakShown,
            OptionalDouble peakLowShown,
            OptionalDouble peakHighShown) {
        public Ladder {
            limits = List.copyOf(limits);
        }
    }

    /** A measured point. */
    public record Point(Instant at, double shown) {}

    /** A point of the forecast with its band. */
    public record FanPoint(Instant at, double shown, double lowShown, double highShown) {}

    /** Something that happened, with a word. */
    public record Flag(Instant at, String word, Weight weight) {
        /** How it is drawn. */
        public enum Weight {
            /** A tick at the top. */
            TICK,
            /** A line through the whole trace. */
            THROUGH
        }

        /** A tick. */
        public Flag(Instant at, String word) {
            this(at, word, Weight.TICK);
        }
    }

    /** A time without readings. */
    public record Gap(Instant from, Instant to) {}

    /**
     * The curve.
     *
     * @param from left edge
     * @param now the line between measured and forecast
     * @param to right edge
     * @param bottomShown lower end of the scale
     * @param topShown upper end of the scale
     * @param bandLowShown lower end of the hatched target range
     * @param bandHighShown its upper end
     * @param limitShown the limit line, where it belongs to this phase
     * @param fan empty where nothing can be said
     * @param crystals what was said of the crystals, oldest first; empty before the cool step
     * @param past that it shows what was, and how long ago; then {@code now} lies beyond its right edge
     */
    public record Trace(
            Instant from,
            Instant now,
            Instant to,
            double bottomShown,
            double topShown,
            double bandLowShown,
            double bandHighShown,
            OptionalDouble limitShown,
            List<Point> points,
            List<FanPoint> fan,
            List<Flag> flags,
            List<Gap> gaps,
            List<Stretch> crystals,
            Optional<String> past) {
        public Trace {
            points = List.copyOf(points);
            fan = List.copyOf(fan);
            flags = List.copyOf(flags);
            gaps = List.copyOf(gaps);
            crystals = List.copyOf(crystals);
            Objects.requireNonNull(past, "past");
        }
    }

    /** A slow value in a tile of its own, with the range in which it is as it should be; infinite where all is well. */
    public record Tile(String title, double value, int decimals, String unit, double low, double high) {}

    /**
     * An alarm that is not quiet, or a notice that must be seen beside them, for the strip.
     *
     * @param words what it is
     * @param state new, known or passed; of a notice what to press
     * @param isNotice whether it is something to know and no alarm
     */
    public record AlarmRow(Tone tone, Direction direction, String words, String state, boolean isNotice) {
        /** An alarm. */
        public AlarmRow(Tone tone, Direction direction, String words, String state) {
            this(tone, direction, words, state, false);
        }

        /** Something to know and no alarm; its state says what to press, or that nothing is asked. */
        static AlarmRow notice(String words, String state) {
            return new AlarmRow(Tone.ADVISE, Direction.NONE, words, state, true);
        }

        /** Whether it tells what was and holds no longer. */
        public boolean hasPassed() {
            return state.equals(WatchText.PASSED.say());
        }
    }
}
