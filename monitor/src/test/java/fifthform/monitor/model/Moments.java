package fifthform.monitor.model;

import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.FanPoint;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Gap;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Outlook;
import fifthform.monitor.model.WatchPicture.Point;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.model.WatchPicture.Tile;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CauseText;
import fifthform.monitor.texts.CueText;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.texts.SoundText;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Moments of one invented batch, for pictures and screen tests: the words are the program's own, and every figure comes from
 * the batch's curve at that moment.
 */
public final class Moments {
    private static final Instant START = Instant.parse("2026-01-01T13:20:00Z");
    private static final Units UNITS = Units.CELSIUS;
    private static final String DARK = "dark, 1 kg, steel bowl";
    private static final String KEYS = KeyMap.USUAL.fill(LiveText.KEYS_OF_WATCH.say());
    private static final String NOTICE = KeyMap.USUAL.fill(LiveText.NOTICE_OF_PRACTICE.say());
    private static final List<Mark> GOOD = List.of(
            new Mark(LiveText.SOUND_MARK.say(), true),
            new Mark(WatchText.SAVED.say(), true),
            new Mark(WatchText.READING.say(), true));
    private static final List<Mark> BAD = List.of(
            new Mark(SoundText.NO_SOUND_ON_THIS_COMPUTER.say(), false),
            new Mark(WatchText.NOT_SAVED.say(), false),
            new Mark(WatchText.NO_READING.say(), false));
    private static final String PROVE = WatchText.TEMPERATURE_DOES_NOT_PROVE.say();
    private static final String SURVIVED =
            CauseText.WHAT_SURVIVED_ABOVE.say("34.6 °C", "3 min 10 s", "32.5", SurvivedWords.share(0.1)) + " · "
                    + CauseText.COOL_AGAIN.say("27 to 28.5 °C", CauseText.TOO_FEW_ARE_LEFT.say());

    private static final Crystals DOUBTFUL = new Crystals(
            InWords.crystals(SeedWord.DOUBTFUL, false),
            CrystalModel.LIMITS.say(),
            List.of(
                    CrystalModel.range(new SeedRange(0.03, 0.008, 0.002)),
                    WatchText.IT_COUNTS_AS_AS_THE_WATER.say(WatchText.STIRRED.say()),
                    WatchText.DOUBTFUL_SINCE_HALF_A_DEGREE.say()),
            "",
            "");

    /** The longest words that stand under the number. */
    static final String LONGEST_DOUBT =
            WatchText.WITHIN.say("10.4 °F") + WatchText.CHECK_AGAIN_LAST_CHECK.say("11 months ago");

    /** The last good reading before the plug came out. */
    private static final double LIFT_MINUTE = 41.44;

    /** Half of the turning point's band, nine times in ten, K. */
    private static final double TURN_HALF = 0.3;

    private Moments() {}

    /** Five of them by name, in the order of a batch. */
    public static Map<String, WatchPicture> five() {
        Map<String, WatchPicture> all = new TreeMap<>();
        all.put("1-melting", melting());
        all.put("2-cooling", cooling());
        all.put("3-lift-now", liftNow());
        all.put("4-heading-over", headingOver());
        all.put("5-unplugged", unplugged());
        return all;
    }

    /** Practice has just begun: the notice stands, and nothing is due. */
    public static WatchPicture melting() {
        double minute = 12;
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                heading("melt", 12, 12),
                DARK,
                GOOD,
                "13:32",
                new Band(
                        Tone.CALM,
                        Direction.NONE,
                        CueText.MELT_GENTLY_STIR_NOW_AND_THEN.say(),
                        CueText.HELD_OF.say("1 min 45 s", "5 min"),
                        false),
                numeral(minute, WatchText.WITHIN.say("0.3 °C")),
                ReasonWords.rate(slope(minute), UNITS),
                List.of(left(WatchText.LEFT_ON_THE_BATH, minute)),
                new Ladder(
                        20,
                        57,
                        5,
                        45,
                        50,
                        WatchText.MELTED.say(),
                        "45 to 50",
                        List.of(limit(55, WatchText.TOO_HOT, minute, Limit.Weight.STRONG)),
                        OptionalDouble.of(celsius(minute)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                trace(
                        0,
                        minute,
                        15,
                        20,
                        57,
                        45,
                        50,
                        OptionalDouble.of(55),
                        fan(minute, 0.3),
                        List.of(flag(0, "melt")),
                        List.of()),
                List.of(tile(WatchText.BATH, 55.4), tile(WatchText.ROOM, 21.3)),
                PROVE,
                List.of(),
                KEYS,
                Optional.empty(),
                Optional.of(NOTICE),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** A real batch in cold water; the last key can still be undone. */
    public static WatchPicture cooling() {
        double minute = 26;
        double turn = celsius(minute) - 0.9;
        return new WatchPicture(
                WatchPicture.Kitchen.REAL,
                heading("cool", 6, 26),
                DARK,
                GOOD,
                "13:46",
                new Band(
                        Tone.CALM,
                        Direction.NONE,
                        CueText.COOL_IT_KEEP_STIRRING.say(),
                        WatchText.OUT_IN_ABOUT.say() + "4 min",
                        false),
                numeral(minute, WatchText.WITHIN.say("4.4 °C") + WatchText.PROBE_NOT_CHECKED.say()),
                ReasonWords.rate(slope(minute), UNITS),
                List.of(turn(turn, TURN_HALF, "60 s"), left(WatchText.LEFT_IN_THE_WATER, minute)),
                new Ladder(
                        24,
                        36,
                        2,
                        27,
                        28.5,
                        WatchText.COOL.say(),
                        "27 to 28.5",
                        List.of(limit(26, WatchText.TOO_COLD, minute, Limit.Weight.STRONG)),
                        OptionalDouble.of(celsius(minute)),
                        OptionalDouble.of(turn),
                        OptionalDouble.of(turn - TURN_HALF),
                        OptionalDouble.of(turn + TURN_HALF)),
                trace(
                        14,
                        minute,
                        29,
                        24,
                        50,
                        27,
                        28.5,
                        OptionalDouble.empty(),
                        fan(minute, 0.3),
                        List.of(flag(16, "melted"), flag(20, "cool")),
                        List.of(new Gap(at(22), at(22.8)))),
                List.of(),
                PROVE,
                List.of(),
                KEYS,
                Optional.of(LiveText.BOWL_IN_COLD_WATER.say() + KeyMap.USUAL.fill(LiveText.UNDO_TAKES_IT_BACK.say())),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The second to lift, caught in time. */
    public static WatchPicture liftNow() {
        double minute = LIFT_MINUTE;
        double turn = celsius(minute) + 0.5;
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                heading("rewarm", 3, 41),
                DARK,
                GOOD,
                "14:01",
                new Band(
                        Tone.CUE,
                        Direction.NONE,
                        CueText.LIFT_THE_BOWL_NOW.say(),
                        CueText.IT_GOES_ON_TO.say(UNITS.withUnit(turn)),
                        false),
                numeral(minute, WatchText.WITHIN.say("0.3 °C")),
                ReasonWords.rate(slope(minute), UNITS),
                List.of(turn(turn, TURN_HALF, "50 s"), left(WatchText.LEFT_ON_THE_BATH, minute)),
                rewarmLadder(minute, turn, TURN_HALF),
                rewarmTrace(minute, fan(minute, 0.3), List.of()),
                List.of(bath(38.2), tile(WatchText.ROOM, 21.3)),
                PROVE,
                List.of(),
                KEYS,
                Optional.empty(),
                Optional.of(NOTICE),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The bowl stands on the bath too long. */
    public static WatchPicture headingOver() {
        double minute = 42.14;
        double turn = celsius(minute) + 0.5;
        String soon = CueText.TOO_HOT_SOON_OFF_THE_HEAT.say();
        String heads = CueText.IT_HEADS_FOR.say(UNITS.withUnit(turn));
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                heading("rewarm", 4, 42),
                DARK,
                GOOD,
                "14:02",
                new Band(Tone.PROMPT, Direction.UP, soon, heads, true),
                numeral(minute, WatchText.WITHIN.say("0.3 °C")),
                ReasonWords.rate(slope(minute), UNITS),
                List.of(turn(turn, TURN_HALF, "50 s"), left(WatchText.LEFT_ON_THE_BATH, minute)),
                rewarmLadder(minute, turn, TURN_HALF),
                rewarmTrace(minute, fan(minute, 0.3), List.of()),
                List.of(bath(46.3), tile(WatchText.ROOM, 21.3)),
                "",
                List.of(
                        new AlarmRow(Tone.PROMPT, Direction.UP, soon + " · " + heads, WatchText.NEW.say()),
                        new AlarmRow(
                                Tone.PROMPT,
                                Direction.UP,
                                CueText.BATH_TOO_HOT_COOL_IT_OR.say() + " · "
                                        + CueText.BATH_STEAM_AND_WATER_SCALD.say("46.3 °C"),
                                WatchText.KNOWN.say())),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                ReasonWords.of(
                        Reason.by(Rule.FORECAST_PASSES_A_LIMIT)
                                .with(Figure.CHOCOLATE_C, celsius(minute))
                                .with(Figure.RATE_K_PER_MIN, slope(minute))
                                .with(Figure.TURN_C, turn)
                                .with(Figure.TURN_LOWER_C, turn - TURN_HALF)
                                .with(Figure.TURN_UPPER_C, turn + TURN_HALF)
                                .with(Figure.LIMIT_C, 32.5)
                                .with(Figure.PAST_LIMIT_K, turn - 32.5),
                        UNITS),
                DOUBTFUL);
    }

    /** The plug came out while the bowl warms. */
    public static WatchPicture unplugged() {
        double minute = LIFT_MINUTE + 0.1;
        String gone = CueText.ADAPTER_GONE_PLUG_IT_IN_AGAIN.say();
        String meanwhile = CueText.IT_IS_FOUND_BY_ITSELF.say();
        Ladder with = rewarmLadder(LIFT_MINUTE, 0, 0);
        Ladder ladder = new Ladder(
                with.bottomShown(),
                with.topShown(),
                with.stepShown(),
                with.bandLowShown(),
                with.bandHighShown(),
                with.bandName(),
                with.bandDetail(),
                with.limits().stream()
                        .map(l -> new Limit(
                                l.atShown(), l.name(), WatchText.AT.say(UNITS.withUnit(l.atShown())), l.weight()))
                        .toList(),
                with.nowShown(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Numeral last = numeral(LIFT_MINUTE, "");
        return new WatchPicture(
                WatchPicture.Kitchen.REAL,
                heading("rewarm", 3, 41),
                DARK,
                List.of(BAD.get(0), GOOD.get(1), BAD.get(2)),
                "14:01",
                new Band(Tone.URGENT, Direction.NONE, gone, meanwhile, true),
                new Numeral(
                        last.whole(),
                        last.hundredths(),
                        last.unit(),
                        Optional.of(WatchText.OLD.say("6 s")),
                        "",
                        List.of()),
                "",
                List.of(new Outlook(WatchText.NO_FORECAST.say(), "", WatchText.WHILE_THERE_IS_NO_GOOD_READING.say())),
                ladder,
                rewarmTrace(minute, List.of(), List.of(new Gap(at(LIFT_MINUTE), at(minute)))),
                List.of(),
                PROVE,
                List.of(new AlarmRow(Tone.URGENT, Direction.NONE, gone + " · " + meanwhile, WatchText.NEW.say())),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** Alarms stand, and the maker asks why. */
    public static WatchPicture asked() {
        return Help.WHY.over(headingOver(), KeyMap.USUAL);
    }

    /** Over the bath, and nobody knows yet where it would turn. */
    public static WatchPicture unsure() {
        WatchPicture lift = liftNow();
        double turn = celsius(LIFT_MINUTE) + 0.5;
        double half = 1.7;
        String band = WatchText.FROM_TO.say(UNITS.oneDecimal(turn - half), UNITS.oneDecimal(turn + half));
        return new WatchPicture(
                lift.kitchen(),
                lift.heading(),
                lift.subject(),
                lift.marks(),
                lift.clock(),
                new Band(
                        Tone.CALM,
                        Direction.NONE,
                        WatchText.UNSURE_SHORT_DIPS_LIFT_AT_THE.say(),
                        WatchText.TURNS_AT.say(band + " °C"),
                        false),
                lift.numeral(),
                lift.rate(),
                List.of(
                        new Outlook(WatchText.LIFTED_NOW_IT_TURNS_AT.say(), band, WatchText.UNSURE.say()),
                        lift.outlooks().get(1)),
                rewarmLadder(LIFT_MINUTE, turn, half),
                rewarmTrace(LIFT_MINUTE, fan(LIFT_MINUTE, 1.2), List.of()),
                lift.tiles(),
                WatchText.ANOTHER_BOWL_THAN_WHAT_THAT.say("“steel, 1 kg”"),
                List.of(AlarmRow.notice(
                        WatchText.THIS_BEHAVES_LIKE_A_BOWL_THAN.say("heavier", "“steel, 1 kg”"),
                        KeyMap.USUAL.fill(WatchText.IT_IS_THE_BOWL.say()))),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE,
                Set.of(Key.IT_IS_THE_BOWL));
    }

    /** Not one moment but the longest words and figures that the screens may meet, all at once, in °F. */
    public static WatchPicture crowded() {
        WatchPicture over = headingOver();
        String hot = CueText.MELT_OUT_COOL_NOW_STOP_POURING.say();
        String cool = CueText.COOL_WATER_UNDER_THE_BOWL_WAS.say("102.5 °F");
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                WatchText.OF_THE_BATCH.say("rewarm", "12 min", "1 h 42 min"),
                "two-ingredient dark, 12.5 kg, stainless steel bowl",
                BAD,
                "23:59",
                new Band(Tone.URGENT, Direction.UP, hot, cool, true),
                new Numeral("102.4", "8", "°F", Optional.of(WatchText.OLD.say("1 h 12 min")), LONGEST_DOUBT, List.of()),
                ReasonWords.rate(slope(42.14), Units.FAHRENHEIT),
                List.of(
                        new Outlook(
                                WatchText.OFF_THE_WATER_IT_TURNS_AT.say(),
                                "102.9",
                                WatchText.FROM_TO.say("102.1", "103.4") + WatchText.IN.say("2 min")),
                        new Outlook(WatchText.LEFT_ON_THE_BATH.say(), "108.8", WatchText.IN_THREE_MINUTES.say())),
                inFahrenheit(over.ladder()),
                inFahrenheit(over.trace()),
                List.of(
                        new Tile(WatchText.BATH.say(), 115.3, 1, "°F", 88, 104),
                        new Tile(
                                WatchText.ROOM.say(),
                                70.3,
                                1,
                                "°F",
                                Double.NEGATIVE_INFINITY,
                                Double.POSITIVE_INFINITY)),
                SURVIVED,
                List.of(
                        new AlarmRow(Tone.URGENT, Direction.UP, hot + " · " + cool, WatchText.NEW.say()),
                        new AlarmRow(
                                Tone.PROMPT,
                                Direction.UP,
                                CueText.BATH_TOO_HOT_COOL_IT_OR.say() + " · "
                                        + CueText.BATH_STEAM_AND_WATER_SCALD.say("115.3 °F"),
                                WatchText.KNOWN.say()),
                        new AlarmRow(
                                Tone.URGENT,
                                Direction.UP,
                                CueText.NEAR_MELT_OUT_WAS_OVER.say("91.4 °F", "14:02"),
                                WatchText.PASSED.say()),
                        new AlarmRow(
                                Tone.CALM,
                                Direction.NONE,
                                CueText.WILL_THICKEN_SOON_A_TOUCH_OF.say(),
                                LiveText.ASIDE_LEFT.say("4 min 20 s"))),
                KEYS,
                Optional.of(LiveText.PROBE_IS_OUT.say() + KeyMap.USUAL.fill(LiveText.UNDO_TAKES_IT_BACK.say())),
                Optional.of(NOTICE),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE,
                Set.of(Key.IT_IS_THE_BOWL, Key.PROVED));
    }

    private static String heading(String phase, long minutes, long ofTheBatch) {
        return WatchText.OF_THE_BATCH.say(
                phase, Spans.minutes(Duration.ofMinutes(minutes)), Spans.minutes(Duration.ofMinutes(ofTheBatch)));
    }

    private static Numeral numeral(double minute, String doubt) {
        String text = Units.format("%.2f", celsius(minute));
        int end = text.length() - 1;
        return new Numeral(text.substring(0, end), text.substring(end), "°C", Optional.empty(), doubt, List.of());
    }

    private static Outlook turn(double celsius, double half, String in) {
        return new Outlook(
                WatchText.LIFTED_NOW_IT_TURNS_AT.say(),
                UNITS.oneDecimal(celsius),
                WatchText.FROM_TO.say(UNITS.oneDecimal(celsius - half), UNITS.oneDecimal(celsius + half))
                        + WatchText.IN.say(in));
    }

    private static Outlook left(WatchText label, double minute) {
        return new Outlook(
                label.say(), UNITS.oneDecimal(celsius(minute) + course(minute, 3)), WatchText.IN_THREE_MINUTES.say());
    }

    private static Limit limit(double celsius, WatchText name, double minute, Limit.Weight weight) {
        double way = celsius - celsius(minute);
        double minutes = way / slope(minute);
        String degrees = UNITS.difference(Math.abs(way)) + WatchText.AWAY.say();
        return new Limit(
                celsius, name.say(), minutes < 30 ? degrees + " · " + Spans.about(60 * minutes) : degrees, weight);
    }

    private static Tile tile(WatchText title, double celsius) {
        return new Tile(title.say(), celsius, 1, "°C", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static Tile bath(double celsius) {
        return new Tile(WatchText.BATH.say(), celsius, 1, "°C", 31, 41);
    }

    private static Ladder rewarmLadder(double minute, double turn, double half) {
        return new Ladder(
                26.5,
                34.6,
                2,
                31,
                32,
                WatchText.WORKING.say(),
                "31 to 32",
                List.of(
                        limit(33.8, WatchText.MELT_OUT, minute, Limit.Weight.STRONG),
                        limit(33.0, WatchText.GUARD, minute, Limit.Weight.THIN)),
                OptionalDouble.of(celsius(minute)),
                OptionalDouble.of(turn),
                OptionalDouble.of(turn - half),
                OptionalDouble.of(turn + half));
    }

    private static Ladder inFahrenheit(Ladder l) {
        return new Ladder(
                fahrenheit(l.bottomShown()),
                fahrenheit(l.topShown()),
                Units.FAHRENHEIT.shownDifference(l.stepShown()),
                fahrenheit(l.bandLowShown()),
                fahrenheit(l.bandHighShown()),
                l.bandName(),
                "87.8 to 89.6",
                l.limits().stream()
                        .map(limit -> new Limit(
                                fahrenheit(limit.atShown()),
                                limit.name(),
                                Units.format("%.1f", 102.48 - fahrenheit(limit.atShown())) + " °F"
                                        + WatchText.PAST_IT.say(),
                                limit.weight()))
                        .toList(),
                OptionalDouble.of(102.48),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Trace inFahrenheit(Trace t) {
        return new Trace(
                t.from(),
                t.now(),
                t.to(),
                fahrenheit(t.bottomShown()),
                fahrenheit(t.topShown()),
                fahrenheit(t.bandLowShown()),
                fahrenheit(t.bandHighShown()),
                OptionalDouble.of(fahrenheit(t.limitShown().orElseThrow())),
                t.points().stream()
                        .map(p -> new Point(p.at(), fahrenheit(p.shown())))
                        .toList(),
                t.fan().stream()
                        .map(f -> new FanPoint(
                                f.at(), fahrenheit(f.shown()), fahrenheit(f.lowShown()), fahrenheit(f.highShown())))
                        .toList(),
                t.flags(),
                t.gaps(),
                t.crystals(),
                t.past());
    }

    private static double fahrenheit(double celsius) {
        return Units.FAHRENHEIT.shown(celsius);
    }

    /** After an overshoot: three words on the strip, the loss marked, what survived beside the alarms, a question. */
    public static WatchPicture crystals() {
        WatchPicture now = cooling();
        Trace t = now.trace();
        List<Flag> flags = new ArrayList<>(t.flags());
        flags.add(new Flag(at(23), CauseText.SEED_LIKELY_LOST.say("13:43", "34.6 °C"), Flag.Weight.THROUGH));
        Trace trace = new Trace(
                t.from(),
                t.now(),
                t.to(),
                t.bottomShown(),
                t.topShown(),
                t.bandLowShown(),
                t.bandHighShown(),
                t.limitShown(),
                t.points(),
                t.fan(),
                flags,
                t.gaps(),
                List.of(
                        new Stretch(at(15), at(18), SeedWord.TOO_FEW, false),
                        new Stretch(at(18), at(20), SeedWord.DOUBTFUL, false),
                        new Stretch(at(20), at(22), SeedWord.ENOUGH, false),
                        new Stretch(at(22), at(25), SeedWord.ENOUGH, true),
                        new Stretch(at(25), at(26), SeedWord.DOUBTFUL, false)),
                Optional.empty());
        return new WatchPicture(
                now.kitchen(),
                now.heading(),
                now.subject(),
                now.marks(),
                now.clock(),
                now.band(),
                now.numeral(),
                now.rate(),
                now.outlooks(),
                now.ladder(),
                trace,
                now.tiles(),
                SURVIVED,
                List.of(),
                now.keys(),
                now.undo(),
                now.banner(),
                now.notice(),
                List.of(WatchText.NOTHING_IS_DUE_YET.say()),
                new Crystals(DOUBTFUL.word(), DOUBTFUL.limits(), DOUBTFUL.why(), "", SURVIVED));
    }

    private static Trace rewarmTrace(double minute, List<FanPoint> fan, List<Gap> gaps) {
        double last = gaps.isEmpty() ? minute : LIFT_MINUTE;
        Trace trace = trace(
                minute - 14,
                last,
                minute + 2,
                26.5,
                34.2,
                31,
                32,
                OptionalDouble.of(33.8),
                fan,
                List.of(flag(31, "seed"), flag(38.2, "rewarm")),
                gaps);
        return new Trace(
                trace.from(),
                at(minute),
                trace.to(),
                trace.bottomShown(),
                trace.topShown(),
                trace.bandLowShown(),
                trace.bandHighShown(),
                trace.limitShown(),
                trace.points(),
                fan,
                trace.flags(),
                gaps,
                List.of(),
                Optional.empty());
    }

    private static Trace trace(
            double from,
            double now,
            double to,
            double bottom,
            double top,
            double bandLow,
            double bandHigh,
            OptionalDouble limit,
            List<FanPoint> fan,
            List<Flag> flags,
            List<Gap> gaps) {
        List<Point> points = new ArrayList<>();
        for (int second = (int) Math.round(from * 60); second <= now * 60; second++) {
            Instant when = START.plusSeconds(second);
            boolean inside = gaps.stream().anyMatch(gap -> when.isAfter(gap.from()) && when.isBefore(gap.to()));
            if (!inside) points.add(new Point(when, celsius(second / 60.0)));
        }
        return new Trace(
                at(from),
                at(now),
                at(to),
                bottom,
                top,
                bandLow,
                bandHigh,
                limit,
                points,
                fan,
                flags,
                gaps,
                List.of(),
                Optional.empty());
    }

    /** Left where it stands, for the next two minutes; less sure as it goes on. */
    private static List<FanPoint> fan(double minute, double widest) {
        List<FanPoint> fan = new ArrayList<>();
        for (double ahead = 0; ahead <= 2 + 1e-9; ahead += 0.05) {
            double shown = celsius(minute) + course(minute, ahead);
            double half = widest * (1 - Math.exp(-ahead / 0.5));
            fan.add(new FanPoint(at(minute + ahead), shown, shown - half, shown + half));
        }
        return fan;
    }

    /** What it gains in so many minutes: the slope of now, dying away as bath and bowl come together, K. */
    private static double course(double minute, double ahead) {
        double tau = 6;
        return slope(minute) * tau * (1 - Math.exp(-ahead / tau));
    }

    /** K/min over the last seconds, as a rate is measured. */
    private static double slope(double minute) {
        return (celsius(minute) - celsius(minute - 0.1)) / 0.1;
    }

    /** The batch's curve: melted, cooled in water, held, warmed again. */
    private static double celsius(double minute) {
        if (minute < 20) return 48.5 - 26.5 * Math.exp(-minute / 5.06);
        if (minute < 31) return 20 + 28 * Math.exp(-(minute - 20) / 8.22);
        if (minute < 38.2) return 27.34 + 0.06 * Math.sin(minute * 2.2);
        return 27.35 + Math.min(minute - 38.2, 0.9) * 1.1 + Math.max(0, minute - 39.1) * 1.24;
    }

    private static Flag flag(double minute, String word) {
        return new Flag(at(minute), word);
    }

    private static Instant at(double minute) {
        return START.plusMillis(Math.round(minute * 60_000));
    }
}
