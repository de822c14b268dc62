package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Priority;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.Countdown;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.cue.Dips;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SampleProved.Verdict;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.session.Altered;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the maker is told to do, counted down, with its figures, and why. */
class BandModelTest {
    private static final Pattern COUNT = Pattern.compile("Get ready: lift in about ([0-9]+) s");

    /** On live time, reading by reading: each second is shown once at the most, and none comes back. */
    @Test
    void theCountdownNeverJumpsUp() {
        List<List<Integer>> stands = new ArrayList<>();
        boolean[] stood = {false};
        Tapes.each(Tapes.UNPLUGGED, snapshot -> {
            boolean open = snapshot.state().cues().isOpen(CueId.GET_READY);
            if (open && !stood[0]) stands.add(new ArrayList<>());
            stood[0] = open;
            Matcher count = COUNT.matcher(picture(snapshot).band().headline());
            if (open && count.matches()) stands.get(stands.size() - 1).add(Integer.parseInt(count.group(1)));
        });
        assertFalse(stands.isEmpty(), "nobody is told to get ready");
        for (List<Integer> shown : stands)
            for (int i = 1; i < shown.size(); i++) assertTrue(shown.get(i) <= shown.get(i - 1), shown.toString());
        Set<Integer> all = new HashSet<>();
        stands.forEach(all::addAll);
        assertTrue(all.size() >= 8, "it hardly counts: " + all);
    }

    /** What was set aside stays in sight, last, without a symbol, with the time until it comes back. */
    @Test
    void anAlarmThatIsSetAsideStaysInSight() {
        SessionSnapshot moment = Tapes.first(
                Tapes.OWN_WAY,
                s -> s.state().alarms().standing().stream()
                        .anyMatch(id -> s.state().alarms().of(id).priority() != Priority.URGENT));
        State state = moment.state();
        AlarmId id = state.alarms().standing().stream()
                .filter(a -> state.alarms().of(a).priority() != Priority.URGENT)
                .findFirst()
                .orElseThrow();
        AlarmBank aside = state.alarms().shelved(id, Duration.ofMinutes(5), state.at());
        List<WatchPicture.AlarmRow> rows =
                picture(Altered.with(moment, Altered.with(state, aside))).alarms();
        WatchPicture.AlarmRow row = rows.get(rows.size() - 1);
        assertEquals("set aside, 5 min left", row.state());
        assertEquals(WatchPicture.Tone.CALM, row.tone());
    }

    /** Past the limit "soon" would be untrue, though the warning before it stands as well; once it is over, "now" would. */
    @Test
    void pastMeltOutTheBandSaysWhatIsAndThenWhatWas() {
        List<String> hot = new ArrayList<>();
        List<String> over = new ArrayList<>();
        Tapes.each(Tapes.OWN_WAY, snapshot -> {
            if (!(snapshot.state().alarms().of(AlarmId.MELT_OUT).state() instanceof AlarmState.Unacknowledged alarm))
                return;
            Band band = picture(snapshot).band();
            double celsius = snapshot.state().estimate().orElseThrow().chocolateCelsius();
            if (alarm.overSince().isEmpty()) {
                hot.add(band.headline());
                assertEquals("cool water under the bowl; now " + Units.CELSIUS.withUnit(celsius), band.aside());
                return;
            }
            over.add(band.headline());
            assertTrue(
                    band.aside().matches("it peaked at 3[4-9]\\.[0-9] °C; Enter cools again, V: proved"), band.aside());
            String why = String.join(" ", picture(snapshot).why());
            assertTrue(why.startsWith("It was past melt-out, 33.8 °C, and peaked at 3"), why);
            assertTrue(why.contains("Now it stands at " + Units.CELSIUS.withUnit(celsius)), why);
            assertTrue(why.contains("Enter to cool it again"), why);
            picture(snapshot).alarms().forEach(row -> assertFalse(row.words().startsWith("Melt-out"), row.words()));
        });
        assertEquals(Set.of("Melt-out: cool now, stop pouring"), Set.copyOf(hot));
        assertEquals(Set.of("Melted out: cool again, seed, or prove it"), Set.copyOf(over));
    }

    /** Within its deadband it still stands, but by what the number says now. */
    @Test
    void whyAnAlarmStandsIsToldByTheNumberThatIsShown() {
        Pattern stands = Pattern.compile("It stands at ([0-9.]+) °C");
        int[] seen = {0};
        Tapes.each(Tapes.OWN_WAY, s -> {
            Tone tone = picture(s).band().tone();
            Matcher said = stands.matcher(String.join(" ", picture(s).why()));
            if (tone != Tone.PROMPT && tone != Tone.URGENT || !said.find()) return;
            double now = s.state().estimate().orElseThrow().chocolateCelsius();
            assertEquals(
                    now,
                    Double.parseDouble(said.group(1)),
                    0.051,
                    String.join(" ", picture(s).why()));
            seen[0]++;
        });
        assertTrue(seen[0] > 20, seen[0] + " alarms");
    }

    /** What is held and what is still to be held add up to what is said in all. */
    @Test
    void theMinutesOfTheHoldAddUp() {
        Pattern all = Pattern.compile("(longer|less), about ([0-9]+) min in all; 6 min is the rule");
        int[] seen = {0};
        Tapes.each(Tapes.UNPLUGGED, s -> {
            OpenCue stir = s.state().cues().open().get(CueId.STIR_ON);
            if (stir == null || !picture(s).band().headline().startsWith("Stir here")) return;
            String why = String.join(" ", picture(s).why());
            assertFalse(why.contains("Nothing is due"), why);
            Matcher said = all.matcher(why);
            if (!said.find()) return;
            double minutes = stir.reason().figure(Figure.HELD_S).orElseThrow() / 60
                    + stir.figure().orElseThrow();
            assertEquals(minutes, Double.parseDouble(said.group(2)), 0.51, why);
            seen[0]++;
        });
        assertTrue(seen[0] > 20, seen[0] + " moments");
    }

    /** Until a sample is proved the band asks for it; with surely too few crystals it does not send them to the moulds. */
    @Test
    void nothingIsPouredUnproved() {
        SessionSnapshot work = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().batch().phase() == Phase.WORK
                        && s.state().cues().done().inRangeAt().isPresent()
                        && picture(s).band().tone() == Tone.CALM);
        assertEquals("Prove a sample, then pour", picture(work).band().headline());
        assertTrue(picture(work).isInTheRow(Key.PROVED), "the key that is asked for can be pressed with a pointer");
        assertFalse(picture(work).isInTheRow(Key.THEME), "it takes the place of one that is not needed now");
        assertTrue(picture(work).isInTheRow(Key.FULL_SCREEN));
        SessionSnapshot proved = proved(work, Verdict.IN_TEMPER);
        assertEquals("Pour, and stir between moulds", picture(proved).band().headline());
        assertFalse(picture(proved).isInTheRow(Key.PROVED));
        Look pressed = new Look(
                Units.CELSIUS,
                ZoneOffset.UTC,
                List.of(),
                KeyMap.USUAL,
                "",
                Optional.empty(),
                Optional.empty(),
                Look.Asking.ANSWERED,
                LookBack.NOW,
                Optional.of(Key.PROVED));
        assertTrue(
                WatchModel.picture(proved, pressed).isInTheRow(Key.PROVED),
                "a second press, which means the other verdict, finds it where it was");
        assertEquals(
                "Prove a sample, then pour",
                picture(proved(work, Verdict.NOT_IN_TEMPER)).band().headline());
        Band few = picture(Altered.saying(work, SeedWord.TOO_FEW)).band();
        assertEquals("Too few crystals to pour: cool it again", few.headline());
        assertEquals("aim 27 to 28 °C", few.aside());
        SessionSnapshot arrives = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().cues().isOpen(CueId.IN_RANGE)
                        && picture(s).band().headline().startsWith("In range"));
        assertEquals(
                "Too few crystals to pour: cool it again",
                picture(Altered.saying(arrives, SeedWord.TOO_FEW)).band().headline());
        SessionSnapshot touch =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().cues().isOpen(CueId.TOUCH_OF_WARMTH));
        assertEquals(
                "Too few crystals to pour: cool it again",
                picture(Altered.saying(touch, SeedWord.TOO_FEW)).band().headline(),
                "nothing that leads to the moulds");
    }

    private static SessionSnapshot proved(SessionSnapshot s, Verdict verdict) {
        State after = Engine.step(
                        s.setup(), s.state(), new SampleProved(s.state().at(), verdict))
                .after();
        return Altered.with(s, after);
    }

    @Test
    void aCountThatWaitsForTheForecastIsNoNought() {
        assertEquals("Get ready: lift any second", headline(CueId.GET_READY, 0.3, Reason.by(Rule.TURN_REACHES_AIM)));
        assertEquals("Get ready: lift in about 5 s", headline(CueId.GET_READY, 5.2, Reason.by(Rule.TURN_REACHES_AIM)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SEED_NOW|60|Add 60 g of seed now|it keeps its crystals under 33.8 °C",
                "OFF_NOW|8|OFF NOW|8 s are over: look where it turns",
                "WIPE_AND_STIR|31.0|Wipe the bowl, and stir|it sinks on to about 31.0 °C",
                "WIPE_AND_STIR|31.6|Wipe the bowl, and stir|it goes on to about 31.6 °C",
                "WEAK_BATH|0.2|This bath is too weak: warm it|dips gave only 0.2 °C; bath 34.0 °C",
                "TOUCH_OF_WARMTH|8|About 8 s over the bath, then stir"
                        + "|before it thickens: 31.1 °C, falling 0.3 °C/min",
                "THICKENS_SOON|75|About 75 s left to pour|a touch of warmth, or pour",
                "PUT_BACK|8|Back on for about 8 s, then stir|it turned 0.3 °C short of 31.4 °C",
                "CRYSTALS_ENOUGH|5|Held long enough: about 5 s over the bath|short, then look where it turns",
                "GET_READY|7|Get ready: lift in about 7 s|lifted, it turns at 31.0 to 32.3 °C",
                "LIFT_NOW|31.6|LIFT THE BOWL NOW|it goes on to 31.6 °C",
                "STOP_COOLING|27.5|Out of the water now|it sinks on to 27.5 °C"
            })
    void eachStepHasItsFigures(CueId cue, double figure, String headline, String aside) {
        Reason reason = Reason.by(Rule.SETTLED)
                .with(Figure.CHOCOLATE_C, 31.1)
                .with(Figure.RATE_K_PER_MIN, -0.3)
                .with(Figure.AIM_C, 31.4)
                .with(Figure.BATH_C, 34)
                .with(Figure.TURN_LOWER_C, 31)
                .with(Figure.TURN_UPPER_C, 32.3);
        assertEquals(headline, headline(cue, figure, reason));
        assertEquals(aside, phrases().aside(cue, open(figure, reason)));
    }

    @Test
    void aWeakBathIsSaidOfAStayAsOfDips() {
        Reason stay = Reason.by(Rule.STAY_GIVES_TOO_LITTLE).with(Figure.BATH_C, 33.5);
        assertEquals("rises only 0.1 °C a minute; bath 33.5 °C", phrases().aside(CueId.WEAK_BATH, open(0.1, stay)));
    }

    /** Where far too little is under way the next dip is asked for before the peak. */
    @Test
    void whatStillRisesIsNotSaidToHaveTurned() {
        Reason rising = Reason.by(Rule.SIZED_BY_EARLIER_DIPS)
                .with(Figure.CHOCOLATE_C, 29.3)
                .with(Figure.RATE_K_PER_MIN, 1.4)
                .with(Figure.AIM_C, 31.5);
        assertEquals("it is 2.2 °C short of 31.5 °C", phrases().aside(CueId.PUT_BACK, open(8, rising)));
    }

    @Test
    void aLiftByTheWideBandSaysSoAndWhatComesThen() {
        Reason wide = Reason.by(Rule.UPPER_END_REACHES_RANGE).with(Figure.TURN_UPPER_C, 32.4);
        assertEquals("unsure: up to 32.4 °C; then short dips", phrases().aside(CueId.LIFT_NOW, open(31, wide)));
    }

    /** The band itself stands where else the middle stands, and calm words say what to do. */
    @Test
    void aWideBandIsSaidAndSeen() {
        List<WatchPicture> unsure = new ArrayList<>();
        Tapes.each(Tapes.UNPLUGGED, s -> {
            WatchPicture is = picture(touching(s));
            if (is.band().headline().startsWith("Unsure")) unsure.add(is);
        });
        assertFalse(unsure.isEmpty(), "it is never unsure");
        WatchPicture first = unsure.get(0);
        assertEquals("Unsure: short dips, lift at the first rise", first.band().headline());
        assertEquals(Tone.CALM, first.band().tone());
        assertTrue(
                first.band().aside().matches("turns at [0-9.]+ to [0-9.]+ °C"),
                first.band().aside());
        assertTrue(
                first.outlooks().get(0).value().matches("[0-9.]+ to [0-9.]+"),
                first.outlooks().toString());
        assertEquals("unsure", first.outlooks().get(0).detail());
        String why = String.join(" ", first.why());
        assertTrue(why.matches(".*The band is [0-9.]+ °C wide, too unsure for one lift: short dips, .*"), why);
    }

    @Test
    void aDipThatIsCountedIsNotCalledNothing() {
        SessionSnapshot s = Tapes.first(
                Tapes.UNPLUGGED,
                one -> one.state().batch().phase() == Phase.REWARM
                        && picture(one).band().tone() == Tone.CALM);
        Instant now = s.state().at();
        Dip dip = new Dip(
                Dip.Stage.OVER_BATH,
                Dip.Purpose.REACH,
                now.minusSeconds(9),
                8,
                now.minusSeconds(3),
                30,
                0,
                30,
                0,
                Optional.empty());
        CueBoard was = s.state().cues();
        Dips dips = new Dips(
                Optional.of(dip),
                was.dips().response(),
                was.dips().air(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(now.minusSeconds(9)),
                Optional.empty());
        CueBoard counted = new CueBoard(Map.of(), was.lift(), dips, was.done(), was.held());
        String why = String.join(
                " ", picture(Altered.with(s, Altered.with(s.state(), counted))).why());
        assertFalse(why.contains("Nothing is due"), why);
        assertTrue(why.matches("A dip (is being counted: off in about 5 s, of 8 s|of about 8 s goes on).*"), why);
    }

    /** Hands wait for it: what is shown of the last two minutes in cold water only ever gets less. */
    @Test
    void theTimeLeftInColdWaterNeverGrows() {
        for (String tape : List.of(Tapes.UNPLUGGED, Tapes.OWN_WAY)) {
            double[] last = {Double.POSITIVE_INFINITY};
            int[] shown = {0};
            Tapes.each(tape, s -> {
                Optional<Double> left = s.state().cues().lift().countdown().map(Countdown::seconds);
                if (s.state().batch().place() != Place.COLD_WATER || left.isEmpty()) {
                    last[0] = Double.POSITIVE_INFINITY;
                    return;
                }
                assertTrue(left.get() <= last[0], "grew from " + last[0] + " to " + left.get());
                last[0] = left.get();
                Band band = picture(s).band();
                if (!band.aside().contains("out in about") && !band.headline().contains("out in about")) return;
                assertTrue((band.aside() + band.headline()).contains("out in about " + Spans.about(left.get())));
                shown[0]++;
            });
            assertTrue(shown[0] > 20, tape + ": shown " + shown[0] + " times");
        }
    }

    @Test
    void whoWantsOneLiftIsNotToldToDip() {
        Tapes.each(Tapes.OWN_WAY, s -> {
            WatchPicture is = picture(s);
            assertFalse(is.band().headline().startsWith("Unsure"));
            String why = String.join(" ", is.why());
            assertFalse(
                    s.state().cues().isOpen(CueId.LIFT_NOW) && is.band().aside().contains("dips"),
                    is.band().aside());
            assertFalse(s.state().cues().isOpen(CueId.LIFT_NOW) && why.contains("short dips"), why);
        });
    }

    /** Every step and alarm of both batches can be asked for its reason. */
    @Test
    void whatIsDueCanAlwaysBeAskedWhy() {
        Set<String> asked = new HashSet<>();
        for (String tape : List.of(Tapes.UNPLUGGED, Tapes.OWN_WAY))
            Tapes.each(tape, s -> {
                WatchPicture is = picture(s);
                if (s.state().estimate().isEmpty()) return;
                assertFalse(is.why().isEmpty(), is.band()::headline);
                if (is.band().tone() != Tone.CALM) asked.add(is.why().get(0).replaceAll("[0-9.]+", "#"));
            });
        assertTrue(asked.size() >= 6, asked.toString());
    }

    @Test
    void oneKeyShowsTheReasonAndHidesIt() {
        SessionSnapshot lift =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().cues().isOpen(CueId.LIFT_NOW));
        WatchPicture picture = picture(lift);
        Help shown = Help.CLOSED.after(Key.WHY);
        String words = shown.over(picture, KeyMap.USUAL).banner().orElseThrow();
        assertTrue(words.startsWith("Turning point now about 3"), words);
        assertTrue(words.endsWith("W: hide this."), words);
        assertEquals(
                WatchPicture.Notice.ASKED, shown.over(picture, KeyMap.USUAL).notice());
        assertEquals(picture, shown.after(Key.WHY).over(picture, KeyMap.USUAL));
        assertEquals(Help.KEYS, shown.after(Key.HELP));
        assertEquals(shown, shown.after(Key.SEEN));
        assertTrue(Help.KEYS.over(picture, KeyMap.USUAL).banner().orElseThrow().contains("W: why"));
    }

    private static SessionSnapshot touching(SessionSnapshot s) {
        return new SessionSnapshot(
                s.setup().withApproach(Approach.TOUCHES_WHERE_UNSURE),
                s.state(),
                s.tally(),
                s.trace(),
                s.rawCelsius(),
                s.fault(),
                0);
    }

    private static String headline(CueId cue, double figure, Reason reason) {
        return phrases().headline(cue, open(figure, reason), Phase.REWARM);
    }

    private static OpenCue open(double figure, Reason reason) {
        return new OpenCue(Instant.EPOCH, OptionalDouble.of(figure), reason);
    }

    private static Phrases phrases() {
        Recipe recipe = Tapes.start(Tapes.UNPLUGGED).setup().recipe();
        return new Phrases(Units.CELSIUS, recipe);
    }

    private static WatchPicture picture(SessionSnapshot snapshot) {
        return WatchModel.picture(
                snapshot, new Look(Units.CELSIUS, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty()));
    }
}
