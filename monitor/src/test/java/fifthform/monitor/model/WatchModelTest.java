package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dips;
import fifthform.curves.cue.Done;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.curves.phase.Contact;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.Reason;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Limit;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.session.Altered;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the screens say, held against every moment of two whole invented batches. */
class WatchModelTest {
    /** What fits in the band at the smallest window. */
    private static final int LONGEST_HEADLINE = 45;

    private static final Pattern CELSIUS = Pattern.compile("°C");

    @ParameterizedTest
    @EnumSource(AlarmId.class)
    void everyAlarmHasShortWords(AlarmId alarm) {
        for (Units units : Units.values()) {
            Phrases phrases =
                    new Phrases(units, Tapes.start(Tapes.UNPLUGGED).setup().recipe());
            for (OptionalDouble figure : List.of(OptionalDouble.empty(), OptionalDouble.of(104.44))) {
                isShort(phrases.headline(alarm, figure));
                isShort(phrases.detail(alarm, figure));
                assertFalse(phrases.action(alarm).isBlank());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Doubt.class)
    void everyDoubtHasShortWordsOfItsOwn(Doubt doubt) {
        isShort(ProbePhrases.headline(doubt));
        isShort(ProbePhrases.detail(doubt, KeyMap.USUAL));
        for (Doubt other : Doubt.values()) {
            if (other != doubt) assertNotEquals(ProbePhrases.headline(doubt), ProbePhrases.headline(other));
        }
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void everyFaultHasShortWordsOfItsOwn(Cause cause) {
        isShort(ProbePhrases.headline(cause));
        isShort(ProbePhrases.detail(cause));
        for (Cause other : Cause.values()) {
            if (other != cause) assertNotEquals(ProbePhrases.headline(cause), ProbePhrases.headline(other));
        }
    }

    /** What is said by key shows on the next picture: the other thermometer, and since when the probe is out. */
    @Test
    void theOtherThermometerAndAProbeThatIsOutAreShown() {
        SessionSnapshot good = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().batch().phase() == Phase.SEED
                        && s.state().forecast().isPresent());
        double here = good.state().estimate().orElseThrow().chocolateCelsius();
        Instant now = good.state().at();
        SessionSnapshot near = after(good, new OtherThermometer(now, here + 0.4));
        assertTrue(
                picture(near).foot().matches("other thermometer [0-9.]+ °C at [0-9:]{5}, 0\\.4 °C above( · .*)?"),
                picture(near).foot());
        SessionSnapshot far = after(near, new OtherThermometer(now, here - 4));
        assertTrue(
                picture(far).foot().contains("4.0 °C below: check the probe in ice water"),
                picture(far).foot());

        SessionSnapshot out = after(after(good, new ProbeTakenOut(now)), new Tick(now.plusSeconds(95)));
        assertEquals("Probe is out: nothing is watched", picture(out).band().headline());
        assertEquals("for 1 min 35 s · P puts it back", picture(out).band().aside());
        assertEquals(Optional.of("probe is out"), picture(out).numeral().stale());
    }

    /** What "within ±" is made of can be asked for, and what is known of the tip's lag. */
    @Test
    void theFigureBesideTheReadingIsTakenApart() {
        SessionSnapshot good =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().forecast().isPresent());
        List<String> trust = picture(good).numeral().trust();
        assertTrue(
                trust.get(0)
                        .matches(
                                "Within ±[0-9.]+ °C \\(95 in 100\\): .* wire [0-9.]+, converter and its junction [0-9.]+,"
                                        + " last digit [0-9.]+, noise [0-9.]+ °C\\."),
                trust.get(0));
        assertEquals(
                "The tip lags 4.0 s: assumed until it is dipped into melted chocolate; what it lags by is taken off.",
                trust.get(1));
        assertEquals(
                Optional.of(String.join(" ", trust) + " H: hide this."),
                Help.KEYS.next().over(picture(good), KeyMap.USUAL).banner());
        assertEquals(picture(good), Help.TRUST.next().over(picture(good), KeyMap.USUAL));
    }

    @Test
    void aLagIsToldInTheMinuteAfterTheDipAndStaysToBeAskedFor() {
        SessionSnapshot cold = Tapes.start(Tapes.UNPLUGGED);
        Instant start = cold.state().at();
        SessionSnapshot dipped = cold;
        for (int i = 1; i <= 60; i++) {
            // In the air for 5 s, then in chocolate of 46 °C with a tip of 5 s.
            double tip = i < 25 ? 22 : 46 - 24 * Math.exp(-(i - 25) * 0.2 / 5);
            dipped = reading(dipped, start.plusMillis(200L * i), tip);
        }
        for (int i = 61; i <= 400 && !picture(dipped).foot().contains("dip"); i++) {
            double tip = 46 - 24 * Math.exp(-(i - 25) * 0.2 / 5);
            dipped = reading(dipped, start.plusMillis(200L * i), tip);
        }
        assertTrue(
                picture(dipped).foot().matches("The dip shows that the tip lags (4\\.9|5\\.[01]) s \\(±.*"),
                picture(dipped).foot());
        String kept = picture(dipped).numeral().trust().get(1);
        assertTrue(kept.startsWith("The dip shows that the tip lags "), kept);
        SessionSnapshot later = after(dipped, new Tick(dipped.state().at().plusSeconds(61)));
        assertFalse(picture(later).foot().contains("dip"), picture(later).foot());
        assertEquals(kept, picture(later).numeral().trust().get(1));
    }

    /** A tip between 22 and 46 °C was never at 50: with its lag undone on the way it would seem so. */
    @Test
    void aNumberInDoubtIsNoMoreThanTheTipSays() {
        SessionSnapshot dipped = Tapes.start(Tapes.UNPLUGGED);
        Instant start = dipped.state().at();
        int doubted = 0;
        for (int i = 0; i < 480; i++) {
            double tip = i < 30 ? 22 + 0.01 * (i % 3) : 46 - 24 * Math.exp(-(i - 30) * 0.2 / 5);
            if (i >= 330) tip = 22 + 24 * Math.exp(-(i - 330) * 0.2 / 5);
            dipped = reading(dipped, start.plusMillis(200L * (i + 1)), tip);
            WatchPicture.Numeral shown = picture(dipped).numeral();
            if (shown.stale().isEmpty()) continue;
            doubted++;
            double celsius = Double.parseDouble(shown.whole() + shown.hundredths());
            assertTrue(celsius >= 21.9 && celsius <= 46.1, shown.toString());
        }
        assertTrue(doubted > 5, doubted + " in doubt");
    }

    private static SessionSnapshot reading(SessionSnapshot before, Instant at, double celsius) {
        double read = Math.round(celsius * 100) / 100.0;
        return after(
                before,
                new Sample(
                        at,
                        before.setup().bowlProbe().id(),
                        read,
                        0.003,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
    }

    private static SessionSnapshot after(SessionSnapshot before, Input input) {
        State next = Engine.step(before.setup(), before.state(), input).after();
        return new SessionSnapshot(
                before.setup(), next, before.tally(), before.trace(), before.rawCelsius(), before.fault(), 0);
    }

    @ParameterizedTest
    @EnumSource(CueId.class)
    void everyCueHasShortWords(CueId cue) {
        Instant since = Instant.EPOCH;
        Reason why = new Reason(Reason.Rule.SETTLED, Map.of());
        for (Units units : Units.values()) {
            Phrases phrases =
                    new Phrases(units, Tapes.start(Tapes.UNPLUGGED).setup().recipe());
            for (OptionalDouble figure : List.of(OptionalDouble.empty(), OptionalDouble.of(104.44)))
                for (Phase phase : Phase.values()) {
                    isShort(phrases.headline(cue, new OpenCue(since, figure, why), phase));
                    isShort("x" + phrases.aside(cue, new OpenCue(since, figure, why)));
                }
        }
    }

    private static void isShort(String words) {
        assertFalse(words.isBlank());
        assertTrue(words.length() <= LONGEST_HEADLINE, words + " has " + words.length() + " characters");
    }

    @ParameterizedTest
    @ValueSource(strings = {Tapes.UNPLUGGED, Tapes.OWN_WAY})
    void aPassedAlarmNeverTakesTheHeadlineFromWhatIsDue(String tape) {
        Set<String> passed = new HashSet<>();
        eachOfMany(tape, snapshot -> {
            State state = snapshot.state();
            Phrases phrases = new Phrases(Units.CELSIUS, snapshot.setup().recipe());
            BandModel band = new BandModel(snapshot.setup(), state, phrases, look(Units.CELSIUS));
            WatchPicture picture = picture(snapshot);
            Set<String> live = new HashSet<>();
            Set<String> over = new HashSet<>();
            for (AlarmId id : state.alarms().standing()) {
                String words = band.headline(id, state.alarms().of(id));
                if (state.alarms().of(id).state() instanceof AlarmState.ReturnedUnacknowledged gone) {
                    String until = gone.returned().toString().substring(11, 16);
                    over.add(phrases.passed(id, until));
                    assertTrue(
                            picture.alarms().stream()
                                    .noneMatch(row -> row.words().startsWith(words)),
                            "it is over, and still gives its order");
                } else live.add(words);
            }
            assertFalse(over.contains(picture.band().headline()), picture.band()::headline);
            over.forEach(words -> assertTrue(
                    picture.alarms().stream()
                            .anyMatch(row ->
                                    row.words().startsWith(words) && row.state().equals("passed")),
                    words));
            boolean isAlarm = live.contains(picture.band().headline());
            if (!live.isEmpty() && isMoreThanAdvice(state)) assertTrue(isAlarm, picture.band()::headline);
            passed.addAll(over);
        });
        if (tape.equals(Tapes.OWN_WAY)) assertFalse(passed.isEmpty(), "the tape holds no passed alarm");
    }

    private static boolean isMoreThanAdvice(State state) {
        return state.alarms().standing().stream()
                .map(state.alarms()::of)
                .filter(s -> !(s.state() instanceof AlarmState.ReturnedUnacknowledged))
                .anyMatch(s -> s.priority() != Priority.ADVISE);
    }

    @ParameterizedTest
    @ValueSource(strings = {Tapes.UNPLUGGED, Tapes.OWN_WAY})
    void inFahrenheitNothingIsLeftInCelsius(String tape) {
        eachOfMany(tape, snapshot -> {
            WatchPicture picture = WatchModel.picture(snapshot, look(Units.FAHRENHEIT));
            // A digit keeps the figures apart; the trace's own numbers are below.
            assertFalse(CELSIUS.matcher(picture.toString()).find(), picture::toString);
            picture.ladder().limits().stream().map(Limit::atShown).forEach(WatchModelTest::isFahrenheit);
            isFahrenheit(picture.ladder().bottomShown());
            isFahrenheit(picture.ladder().bandHighShown());
            isFahrenheit(picture.trace().bottomShown());
            isFahrenheit(picture.trace().bandLowShown());
            picture.ladder().nowShown().ifPresent(WatchModelTest::isFahrenheit);
            picture.trace().limitShown().ifPresent(WatchModelTest::isFahrenheit);
            picture.trace().points().stream().limit(1).forEach(point -> isFahrenheit(point.shown()));
        });
    }

    /** No temperature of these batches is above 60 °C but the bath's, none below 20 °C; 20 °C is 68 °F. */
    private static void isFahrenheit(double shown) {
        assertTrue(shown > 60, () -> shown + " looks like degrees Celsius");
    }

    @Test
    void bothUnitsSayTheSameTemperature() {
        SessionSnapshot snapshot =
                Tapes.first(Tapes.OWN_WAY, s -> s.state().batch().phase() == Phase.WORK);
        double celsius = snapshot.state().estimate().orElseThrow().chocolateCelsius();
        assertEquals(celsius, number(picture(snapshot)), 0.0051);
        assertEquals(celsius * 9 / 5 + 32, number(WatchModel.picture(snapshot, look(Units.FAHRENHEIT))), 0.0051);
    }

    @Test
    void beforeTheFirstReadingThereIsNoNumber() {
        WatchPicture picture = picture(Tapes.start(Tapes.UNPLUGGED));
        assertEquals("–", picture.numeral().whole());
        assertEquals(Optional.empty(), picture.numeral().stale());
        assertEquals("Waiting for the first reading", picture.band().headline());
        assertEquals(List.of(), picture.outlooks());
        assertEquals(OptionalDouble.empty(), picture.ladder().nowShown());
        assertEquals(List.of(new Mark("saved", true)), picture.marks(), "nothing is wrong yet");
        SessionSnapshot silent = Tapes.start(Tapes.UNPLUGGED);
        for (int s = 1; s <= 60; s++)
            silent = after(silent, new Tick(silent.state().started().plusSeconds(s)));
        assertTrue(picture(silent).marks().contains(new Mark("no reading", false)), "an alarm stands by now");
    }

    @Test
    void anOldNumberIsStruckOutWithItsAgeAndNothingIsForecastFromIt() {
        SessionSnapshot gone = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state()
                        .estimate()
                        .filter(e -> Duration.between(e.at(), s.state().at()).toSeconds() >= 10)
                        .isPresent());
        WatchPicture picture = picture(gone);
        assertTrue(
                picture.numeral().stale().orElseThrow().matches("1[0-9] s old"),
                picture.numeral().toString());
        assertEquals("Adapter gone: plug it in again", picture.band().headline());
        assertEquals(Tone.URGENT, picture.band().tone());
        assertTrue(picture.band().blinking());
        assertEquals(List.of(), picture.trace().fan());
        assertEquals(OptionalDouble.empty(), picture.ladder().peakShown());
        assertEquals("no forecast", picture.outlooks().get(0).label());
        assertEquals("", picture.rate());
    }

    @Test
    void theGapStaysInTheTrace() {
        SessionSnapshot last =
                Tapes.first(Tapes.UNPLUGGED, s -> !s.trace().gaps().isEmpty() && isFresh(s));
        assertEquals(1, picture(last).trace().gaps().size());
        assertTrue(picture(last).trace().flags().stream()
                .anyMatch(flag -> flag.word().equals("rewarm")));
    }

    private static boolean isFresh(SessionSnapshot snapshot) {
        return snapshot.state().estimate().filter(Estimate::isUsable).isPresent();
    }

    @Test
    void whatIsDueIsTheBand() {
        SessionSnapshot lift =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().cues().isOpen(CueId.LIFT_NOW));
        WatchPicture picture = picture(lift);
        assertEquals("LIFT THE BOWL NOW", picture.band().headline());
        assertEquals(Tone.CUE, picture.band().tone());
        assertTrue(
                picture.band().aside().startsWith("it goes on to 3"),
                picture.band().aside());
        assertTrue(picture.ladder().limits().stream().anyMatch(l -> l.name().equals("melt-out")));
        assertNotEquals(List.of(), picture.trace().fan());
    }

    /** Beside the name of a limit a bare figure reads as where it lies; melt-out is no danger on the way down. */
    @Test
    void theWayToALimitCannotBeTakenForATemperature() {
        Set<String> timed = new HashSet<>();
        Tapes.each(Tapes.OWN_WAY, s -> {
            for (WatchPicture.Limit limit : picture(s).ladder().limits()) {
                assertTrue(
                        limit.detail().matches("at [0-9.]+ °C|[0-9.]+ °C (away( · [0-9]+ (s|min))?|past it)"),
                        limit.detail());
                if (!limit.detail().contains("·")) continue;
                boolean falls = s.state().estimate().orElseThrow().rateKelvinPerMinute() < 0;
                assertEquals(falls, limit.name().equals("too cold"), limit.name() + " " + limit.detail());
                timed.add(limit.name());
            }
        });
        assertTrue(timed.containsAll(Set.of("melt-out", "too cold")), timed.toString());
    }

    /** Just put into or over water it still goes the way it went before: no minutes, no course, no countdown. */
    @Test
    void whereItGoesIsNotSaidUntilTheRateIsOfThatWater() {
        Set<String> waters = new HashSet<>();
        Tapes.each(Tapes.OWN_WAY, s -> {
            Contact contact = s.state().batch().contact();
            if (contact.place() == Place.TABLE || s.state().forecast().isEmpty()) return;
            boolean moved = Duration.between(contact.since(), s.state().at()).toSeconds() < 15;
            WatchPicture picture = picture(s);
            WatchPicture.Outlook left =
                    picture.outlooks().get(picture.outlooks().size() - 1);
            assertEquals(moved, left.value().equals("–"), left.toString());
            assertEquals(moved, picture.trace().fan().isEmpty());
            if (!moved) return;
            assertEquals("not settled yet", left.detail());
            picture.ladder()
                    .limits()
                    .forEach(limit -> assertFalse(limit.detail().contains("·"), limit.detail()));
            boolean due = picture.band().tone() != Tone.CALM;
            assertFalse(
                    !due && picture.band().aside().contains("in about"),
                    picture.band().aside());
            waters.add(left.label());
        });
        assertTrue(waters.containsAll(Set.of("left on the bath", "left in the water")), waters.toString());
    }

    /** The ladder's mark is what the row says in words: one never stands without the other. */
    @ParameterizedTest
    @ValueSource(strings = {Tapes.UNPLUGGED, Tapes.OWN_WAY})
    void theLaddersTurningPointHasItsRow(String tape) {
        Set<Boolean> shown = new HashSet<>();
        eachOfMany(tape, s -> {
            WatchPicture picture = picture(s);
            boolean row = picture.outlooks().stream().anyMatch(o -> o.label().endsWith("it turns at"));
            assertEquals(
                    row,
                    picture.ladder().peakShown().isPresent(),
                    () -> s.state().batch() + picture.band().headline());
            if (s.state().forecast().isPresent()) shown.add(row);
        });
        assertEquals(Set.of(true, false), shown);
    }

    /** Short dips lead up to the working range while the phase still has its old name. */
    @Test
    void onTheWayUpLadderCurveAndReasonAimAtOneRange() {
        SessionSnapshot held =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().batch().phase() == Phase.SEED && isFresh(s));
        CueBoard was = held.state().cues();
        Dips up = new Dips(
                Optional.empty(),
                was.dips().response(),
                was.dips().air(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(held.state().at()),
                Optional.empty());
        WatchPicture before = picture(held);
        WatchPicture picture = picture(Altered.with(
                held, Altered.with(held.state(), new CueBoard(Map.of(), was.lift(), up, was.done(), was.held()))));
        assertEquals("27 to 28", before.ladder().bandDetail());
        assertEquals("31 to 32", picture.ladder().bandDetail());
        assertEquals(31, picture.trace().bandLowShown());
        assertEquals("aim 31 to 32 °C", picture.band().aside());
        assertTrue(picture.why().contains("Range 31 to 32 °C."), picture.why().toString());
    }

    /** What stands in the top line needs no tile: they are for slow values. */
    @Test
    void minutesOfPhaseAndBatchHaveNoTile() {
        eachOfMany(
                Tapes.OWN_WAY,
                s -> picture(s)
                        .tiles()
                        .forEach(tile -> assertTrue(
                                Set.of("bath", "warm bath", "room", "to pour").contains(tile.title()), tile.title())));
    }

    /** Nothing of the bowl's coast at the foot: it asks for nothing, and W tells it. */
    @Test
    void theFootHoldsOnlyWhatIsNewsOrAsked() {
        eachOfMany(Tapes.UNPLUGGED, s -> assertFalse(picture(s).foot().contains("coasts"), picture(s)::foot));
    }

    @Test
    void aSeedThatNobodySaidIsTold() {
        SessionSnapshot s =
                Tapes.first(Tapes.UNPLUGGED, one -> one.state().batch().phase() == Phase.REWARM);
        CueBoard was = s.state().cues();
        Done over = new Done(0, Done.Seed.OVER, Optional.empty(), Optional.empty());
        SessionSnapshot unsaid = new SessionSnapshot(
                s.setup().withSeedGrams(OptionalDouble.of(60)),
                Altered.with(s.state(), new CueBoard(was.open(), was.lift(), was.dips(), over, was.held())),
                s.tally(),
                s.trace(),
                s.rawCelsius(),
                s.fault(),
                0);
        WatchPicture.AlarmRow row = picture(unsaid).alarms().get(0);
        assertEquals("the planned seed, 60 g, was not said to be in; it keeps under 33.8 °C", row.words());
        assertTrue(row.isNotice());
        assertEquals(List.of(), picture(s).alarms());
    }

    /** 2·√(1.443² + 1.644²) of a cheap probe's limits; a check's 2.0 K hide what else there is. */
    @Test
    void howFarAReadingCanBeTrustedStandsBesideIt() {
        SessionSnapshot now = Tapes.first(Tapes.UNPLUGGED, WatchModelTest::isFresh);
        assertEquals("within ±4.4 °C", picture(now).numeral().doubt(), "nobody can check a simulated probe");
        assertEquals("within ±4.0 °C", picture(checked(now, 2.0)).numeral().doubt());
        assertTrue(
                picture(checked(now, 0.1)).numeral().doubt().startsWith("within ±0."),
                () -> picture(checked(now, 0.1)).numeral().doubt());
    }

    private static SessionSnapshot checked(SessionSnapshot now, double sigmaKelvin) {
        Setup setup = now.setup();
        Correction correction = new Correction(1, 0, sigmaKelvin, Optional.of(Instant.EPOCH));
        List<ProbeSetup> probes = setup.probes().stream()
                .map(p -> new ProbeSetup(p.id(), p.role(), p.talk(), p.place(), correction, p.lagSeconds(), p.sensor()))
                .toList();
        Setup checked = new Setup(
                setup.recipe(),
                setup.bowl(),
                probes,
                setup.reactionTime(),
                setup.bathCelsius(),
                setup.roomCelsius(),
                setup.origin(),
                setup.approach(),
                setup.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
        return new SessionSnapshot(
                checked, now.state(), now.tally(), now.trace(), now.rawCelsius(), now.fault(), now.publishedNanos());
    }

    @Test
    void practiceIsSaidAllTheTime() {
        eachOfMany(Tapes.UNPLUGGED, snapshot -> assertTrue(picture(snapshot).simulated()));
    }

    @Test
    void aFaultOfTheProgramShowsTheRawReading() {
        SessionSnapshot now = Tapes.first(Tapes.UNPLUGGED, s -> s.rawCelsius().isPresent());
        SessionSnapshot bad = new SessionSnapshot(
                now.setup(), now.state(), now.tally(), now.trace(), OptionalDouble.of(31.25), Optional.of("demo"), 0);
        WatchPicture picture = picture(bad);
        assertEquals("31.2", picture.numeral().whole());
        assertEquals("5", picture.numeral().hundredths());
        assertEquals(Optional.of("raw reading"), picture.numeral().stale());
        isShort(picture.band().headline());
        assertEquals(Tone.PROMPT, picture.band().tone());
    }

    /** The scale stands still while the reading moves in it: else nothing could be compared by eye. */
    @Test
    void theLadderHoldsItsBandAndLimitsWithinItsScale() {
        for (String tape : List.of(Tapes.UNPLUGGED, Tapes.OWN_WAY))
            eachOfMany(tape, snapshot -> {
                WatchPicture.Ladder ladder = picture(snapshot).ladder();
                assertTrue(
                        ladder.bottomShown() <= ladder.bandLowShown() && ladder.bandHighShown() <= ladder.topShown());
                assertFalse(ladder.limits().isEmpty());
                for (Limit limit : ladder.limits())
                    assertTrue(limit.atShown() >= ladder.bottomShown() && limit.atShown() <= ladder.topShown());
                // What has gone past the limit is still seen against it.
                for (Limit limit : ladder.limits())
                    if (limit.weight() == Limit.Weight.STRONG)
                        assertTrue(Math.min(ladder.topShown() - limit.atShown(), limit.atShown() - ladder.bottomShown())
                                >= 1);
                long rungs = Math.round((ladder.topShown() - ladder.bottomShown()) / ladder.stepShown());
                assertTrue(rungs >= 2 && rungs <= 9, rungs + " rungs");
            });
    }

    /** The trace holds what it shows within its scale, and never more points than a screen has columns. */
    @Test
    void theTraceHoldsItsPointsWithinItsScale() {
        eachOfMany(Tapes.OWN_WAY, snapshot -> {
            WatchPicture.Trace trace = picture(snapshot).trace();
            assertTrue(trace.points().size() <= 1500);
            assertEquals(Duration.ofMinutes(10), Duration.between(trace.from(), trace.now()));
            assertEquals(Duration.ofMinutes(2), Duration.between(trace.now(), trace.to()));
            trace.points().forEach(p -> assertTrue(p.shown() >= trace.bottomShown() && p.shown() <= trace.topShown()));
            trace.fan().forEach(f -> {
                assertTrue(f.lowShown() <= f.shown() && f.shown() <= f.highShown());
                // Cut off, the forecast would say least where most is to come.
                assertTrue(f.shown() >= trace.bottomShown() && f.shown() <= trace.topShown());
                assertFalse(f.at().isBefore(trace.now()) || f.at().isAfter(trace.to()));
            });
        });
    }

    @Test
    void theStripIsWorstFirst() {
        eachOfMany(Tapes.OWN_WAY, snapshot -> {
            List<AlarmRow> rows = picture(snapshot).alarms();
            List<Tone> live = rows.stream()
                    .filter(row -> !row.state().equals("passed"))
                    .map(AlarmRow::tone)
                    .toList();
            assertEquals(live.stream().sorted((a, b) -> b.compareTo(a)).toList(), live);
        });
    }

    /** Every eighth moment and each with an alarm or a cue that is new: all would take half a minute. */
    private static void eachOfMany(String tape, Consumer<SessionSnapshot> look) {
        Set<Object> known = new HashSet<>();
        Tapes.each(tape, snapshot -> {
            State state = snapshot.state();
            boolean isNews = known.add(List.of(
                    state.alarms().standing(),
                    state.cues().open().keySet().toString(),
                    state.batch().phase()));
            if (isNews || state.inputs() % 8 == 0) look.accept(snapshot);
        });
    }

    private static double number(WatchPicture picture) {
        return Double.parseDouble(picture.numeral().whole() + picture.numeral().hundredths());
    }

    private static WatchPicture picture(SessionSnapshot snapshot) {
        return WatchModel.picture(snapshot, look(Units.CELSIUS));
    }

    private static Look look(Units units) {
        return new Look(units, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty());
    }
}
