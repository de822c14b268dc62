package fifthform.monitor.model;

import fifthform.curves.crystal.SeedWord;
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
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Five moments of one invented batch (demo), made by hand with figures that agree, for pictures and screen tests. */
public final class Moments {
    private static final Instant START = Instant.parse("2026-01-01T13:20:00Z");
    private static final String KEYS =
            "Space seen · Enter step done · B bowl moved · M mark · N note · U undo · Q quit";
    private static final List<Mark> GOOD =
            List.of(new Mark("sound", true), new Mark("saved", true), new Mark("probe", true));
    private static final String FOOT = "demo batch · estimate from the curve; prove on a sample before pouring";
    private static final String SURVIVED =
            "What survived 34.6 °C (3 min 10 s above 33): about a tenth of the crystals, as the model has it ·"
                    + " cool again, 27 to 28.5 °C: too few are left";
    private static final String BANNER =
            "This is practice: a simulated bowl of chocolate, watched as a real one would be. The top line says what to"
                    + " do now; when it turns dark, do that step. With a thermocouple adapter plugged in, start"
                    + " “watch --probe PORT”; “ports” lists what is there.";

    private Moments() {}

    /** All five by name, in the order of a batch. */
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
                "melt · 12 min · 12 min of the batch",
                "dark, 1 kg, steel bowl",
                GOOD,
                "13:32",
                new Band(Tone.CALM, Direction.NONE, "Let it melt, stir now and then", "47 °C in about 3 min", false),
                new Numeral("46.0", "1", "°C", Optional.empty(), "±0.3 °C", List.of()),
                "rising 0.5 °C a minute",
                List.of(new Outlook("left on the bath", "46.9", "in three minutes")),
                new Ladder(
                        20,
                        56,
                        5,
                        45,
                        50,
                        "melt",
                        "45 to 50",
                        List.of(new Limit(55, "scorch", "9.0 °C away", Limit.Weight.STRONG)),
                        OptionalDouble.of(46.01),
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
                        fan(minute, 46.01, 48.5, 5, 3),
                        List.of(flag(0, "melt")),
                        List.of()),
                List.of(new Tile("bath", 55.4, 1, "°C", 45, 58), new Tile("room", 21.3, 1, "°C", 16, 26)),
                FOOT,
                List.of(),
                KEYS,
                Optional.empty(),
                Optional.of(BANNER),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** A real batch in cold water; the last key can still be undone. */
    public static WatchPicture cooling() {
        double minute = 26;
        return new WatchPicture(
                WatchPicture.Kitchen.REAL,
                "cool · 6 min · 26 min of the batch",
                "dark, 1 kg, steel bowl",
                GOOD,
                "13:46",
                new Band(
                        Tone.CALM, Direction.NONE, "Keep it in the cold water, stir", "out in about 3 min 40 s", false),
                new Numeral("33.5", "3", "°C", Optional.empty(), "±1.0 °C, probe not checked", List.of()),
                "falling 1.6 °C a minute",
                List.of(
                        new Outlook("taken out now, it sinks to", "32.6", "32.2 to 33.0, in 60 s"),
                        new Outlook("left in the water", "29.6", "in three minutes")),
                new Ladder(
                        24,
                        36,
                        2,
                        27,
                        28.5,
                        "cool",
                        "27 to 28.5",
                        List.of(new Limit(26, "too cold", "7.5 °C away · 6 min", Limit.Weight.THIN)),
                        OptionalDouble.of(33.53),
                        OptionalDouble.of(32.6),
                        OptionalDouble.of(32.2),
                        OptionalDouble.of(33.0)),
                trace(
                        14,
                        minute,
                        29,
                        24,
                        50,
                        27,
                        28.5,
                        OptionalDouble.of(26),
                        fan(minute, 33.53, 32.5, 1.2, 3),
                        List.of(flag(16, "melted"), flag(20, "cool")),
                        List.of(new Gap(at(22), at(22.8)))),
                List.of(),
                FOOT,
                List.of(),
                KEYS,
                Optional.of("bowl moved to cold water · U takes it back"),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The second to lift, caught in time. */
    public static WatchPicture liftNow() {
        double minute = 41.44;
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                "rewarm · 3 min · 41 min of the batch",
                "dark, 1 kg, steel bowl",
                GOOD,
                "14:01",
                new Band(Tone.CUE, Direction.NONE, "Lift the bowl now", "then stir and wipe the bottom", false),
                new Numeral("31.2", "4", "°C", Optional.empty(), "±0.3 °C", List.of()),
                "rising 1.0 °C a minute",
                List.of(
                        new Outlook("lifted now, it turns at", "31.7", "31.4 to 32.0, in 50 s"),
                        new Outlook("left on the bath", "33.4", "in three minutes")),
                rewarmLadder(31.24, 31.7, 31.4, 32.0, "2.6 °C away · 3 min", "1.8 °C away · 2 min"),
                rewarmTrace(minute, fan(minute, 31.24, 31.7, 0.5, 2), List.of()),
                List.of(new Tile("bath", 38.2, 1, "°C", 34, 41), new Tile("in this phase", 3, 0, "min", 0, 12)),
                FOOT,
                List.of(),
                KEYS,
                Optional.empty(),
                Optional.of(BANNER),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The bowl stands on the bath too long. */
    public static WatchPicture headingOver() {
        double minute = 42.14;
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                "rewarm · 4 min · 42 min of the batch",
                "dark, 1 kg, steel bowl",
                GOOD,
                "14:02",
                new Band(Tone.PROMPT, Direction.UP, "Too hot soon: lift the bowl now", "cool cloth, stir", true),
                new Numeral("31.9", "4", "°C", Optional.empty(), "±0.3 °C", List.of()),
                "rising 1.0 °C a minute",
                List.of(
                        new Outlook("lifted now, it turns at", "32.4", "32.1 to 32.8, in 50 s"),
                        new Outlook("left on the bath", "34.0", "in three minutes")),
                rewarmLadder(31.94, 32.4, 32.1, 32.8, "1.9 °C away · 2 min", "1.1 °C away · 65 s"),
                rewarmTrace(minute, fan(minute, 31.94, 32.4, 0.5, 2), List.of()),
                List.of(new Tile("bath", 46.3, 1, "°C", 34, 41), new Tile("in this phase", 4, 0, "min", 0, 12)),
                FOOT,
                List.of(
                        new AlarmRow(
                                Tone.PROMPT,
                                Direction.UP,
                                "Lift the bowl now. Left alone it peaks at 34.0 °C in three minutes.",
                                "new"),
                        new AlarmRow(
                                Tone.PROMPT,
                                Direction.UP,
                                "Bath is 8 °C over plan. It will overshoot; steam and water scald.",
                                "known")),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The plug came out while the bowl warms. */
    public static WatchPicture unplugged() {
        double minute = 41.54;
        Ladder with = rewarmLadder(31.24, 0, 0, 0, "", "");
        Ladder ladder = new Ladder(
                with.bottomShown(),
                with.topShown(),
                with.stepShown(),
                with.bandLowShown(),
                with.bandHighShown(),
                with.bandName(),
                with.bandDetail(),
                with.limits(),
                OptionalDouble.of(31.24),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return new WatchPicture(
                WatchPicture.Kitchen.REAL,
                "rewarm · 3 min · 41 min of the batch",
                "dark, 1 kg, steel bowl",
                List.of(
                        new Mark("no sound on this computer", false),
                        new Mark("saved", true),
                        new Mark("no probe", false)),
                "14:01",
                new Band(Tone.URGENT, Direction.NONE, "No reading for 6 s", "lift the bowl, check the plug", true),
                new Numeral("31.2", "4", "°C", Optional.of("6 s old"), "", List.of()),
                "no forecast from an old reading",
                List.of(),
                ladder,
                rewarmTrace(minute, List.of(), List.of(new Gap(at(41.44), at(minute)))),
                List.of(),
                FOOT,
                List.of(new AlarmRow(
                        Tone.URGENT,
                        Direction.NONE,
                        "No reading for 6 s. Check the plug and the lead; reconnecting.",
                        "new")),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** Alarms stand, and the maker asks why. */
    public static WatchPicture asked() {
        return headingOver()
                .answering("Turning point now about 31.6 °C, band 29.9 to 33.4; range 31.0 to 32.0. That band is 3.5 °C"
                        + " wide, too unsure for one lift; so its upper end decides, which reaches 32.0 °C once hands have"
                        + " acted; what is missing comes by short dips. Lift within 12 s; your hands take about 4 s. This"
                        + " bowl coasts about 1.1 °C at 1 °C/min (0.8 to 1.5), from 12 lifts. W: hide this.");
    }

    /** Over the bath, and nobody knows yet where it would turn. */
    public static WatchPicture unsure() {
        WatchPicture lift = liftNow();
        return new WatchPicture(
                lift.kitchen(),
                lift.heading(),
                lift.subject(),
                lift.marks(),
                lift.clock(),
                new Band(
                        Tone.CALM,
                        Direction.NONE,
                        "Unsure: short dips, lift at the first rise",
                        "turns at 29.9 to 33.4 °C",
                        false),
                lift.numeral(),
                lift.rate(),
                List.of(
                        new Outlook("lifted now, it turns at", "29.9 to 33.4", "unsure"),
                        new Outlook("left on the bath", "35.4", "in three minutes")),
                rewarmLadder(31.24, 31.7, 29.9, 33.4, "2.6 °C away · 3 min", "1.8 °C away · 2 min"),
                lift.trace(),
                lift.tiles(),
                "a bowl not met before: one of steel coasts about 0.6 °C at 1 °C/min · temperature does not prove temper:"
                        + " prove a sample",
                List.of(AlarmRow.notice(
                        "this behaves like a heavier bowl than “steel, 1 kg”", "key I: it is the bowl")),
                KEYS,
                Optional.empty(),
                Optional.empty(),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    /** The longest words the screens may meet, all at once. */
    public static WatchPicture crowded() {
        WatchPicture over = headingOver();
        List<AlarmRow> alarms = new ArrayList<>(over.alarms());
        alarms.add(new AlarmRow(Tone.ADVISE, Direction.DOWN, "Will thicken in about 2 min.", "set aside, 4 min left"));
        alarms.add(
                0,
                new AlarmRow(
                        Tone.URGENT, Direction.UP, "Good crystals are melting. Cool now.", "was 33.9 °C at 14:02"));
        return new WatchPicture(
                WatchPicture.Kitchen.SIMULATED,
                "rewarm · 12 min · 1 h 42 min of the batch",
                "two-ingredient dark, 12.5 kg, stainless steel bowl",
                List.of(
                        new Mark("no sound on this computer", false),
                        new Mark("not saved", false),
                        new Mark("no probe", false)),
                "23:59",
                new Band(
                        Tone.URGENT,
                        Direction.UP,
                        "Melt-out: the good crystals are going. Cool now.",
                        "cool, stop pouring; prove on a sample, then cool again or seed",
                        true),
                new Numeral(
                        "102.4",
                        "8",
                        "°F",
                        Optional.of("1 h 12 min old"),
                        "±1.8 °F, probe not checked since it was plugged in",
                        List.of()),
                over.rate(),
                List.of(
                        new Outlook("lifted now, it turns at", "102.9", "102.1 to 103.4, in 1 min 50 s"),
                        new Outlook(
                                "left on the warm bath until then", "108.8", "in three minutes, if nothing changes"),
                        new Outlook("with a cool cloth", "101.7", "in 40 s")),
                over.ladder(),
                over.trace(),
                List.of(
                        new Tile("bath", 115.3, 1, "°F", 90, 104),
                        new Tile("room", 70.3, 1, "°F", 60, 80),
                        new Tile("in this phase", 12, 0, "min", 0, 12)),
                FOOT + "; readings are kept in memory until the disk can be written again",
                alarms,
                KEYS,
                Optional.of("probe taken out of the chocolate on purpose · U takes it back"),
                Optional.of(BANNER),
                WatchPicture.Notice.STANDING,
                List.of(),
                WatchPicture.Crystals.NONE);
    }

    private static Ladder rewarmLadder(double now, double peak, double low, double high, String meltOut, String guard) {
        return new Ladder(
                29,
                34.5,
                1,
                31,
                32,
                "working",
                "31 to 32",
                List.of(
                        new Limit(33.8, "melt-out", meltOut, Limit.Weight.STRONG),
                        new Limit(33.0, "guard", guard, Limit.Weight.THIN)),
                OptionalDouble.of(now),
                OptionalDouble.of(peak),
                OptionalDouble.of(low),
                OptionalDouble.of(high));
    }

    /** After an overshoot: three words on the strip, the loss marked, what survived beside the alarms, a question. */
    public static WatchPicture crystals() {
        WatchPicture now = cooling();
        Trace t = now.trace();
        List<Flag> flags = new ArrayList<>(t.flags());
        flags.add(new Flag(at(23), "seed likely lost 13:43, 34.6 °C", Flag.Weight.THROUGH));
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
                List.of("Nothing is due yet."),
                new Crystals(
                        "doubtful",
                        CrystalModel.LIMITS.say(),
                        List.of(
                                "Crystals: 0.2 to 3 % of the fat in stable ones, best guess 0.8 %; a temper needs 0.5 %."),
                        "",
                        SURVIVED));
    }

    private static Trace rewarmTrace(double minute, List<FanPoint> fan, List<Gap> gaps) {
        double last = gaps.isEmpty() ? minute : 41.44;
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

    /** Approach from {@code now} to {@code end} with time constant {@code tau} minutes, uncertain as it goes on. */
    private static List<FanPoint> fan(double minute, double now, double end, double tau, double minutes) {
        List<FanPoint> fan = new ArrayList<>();
        for (double ahead = 0; ahead <= minutes + 1e-9; ahead += 0.05) {
            double shown = end + (now - end) * Math.exp(-ahead / tau);
            double half = 0.3 * (1 - Math.exp(-ahead / 0.5));
            fan.add(new FanPoint(at(minute + ahead), shown, shown - half, shown + half));
        }
        return fan;
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
