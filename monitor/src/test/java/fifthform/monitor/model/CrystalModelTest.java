package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Misgiving;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.StirWatch;
import fifthform.curves.crystal.Temper;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.recipe.Phase;
import fifthform.monitor.model.Look.Asking;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is said of the crystals, in words. */
class CrystalModelTest {
    private static final Look LOOK =
            new Look(Units.CELSIUS, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty());

    @Test
    void theRangeHasOneDigitAFigure() {
        assertEquals(
                "Crystals: 0.7 to 5 % of the fat in stable ones, best guess 2 %; a temper needs 0.5 %.",
                CrystalModel.range(new SeedRange(0.0512, 0.0204, 0.0071)));
        assertEquals(
                "Crystals: under 0.01 to 0.07 % of the fat in stable ones, best guess 0.02 %; a temper needs 0.5 %.",
                CrystalModel.range(new SeedRange(0.00071, 0.00021, 1e-9)));
        assertEquals(
                "Crystals: the model finds no stable ones yet; a temper needs 0.5 %.",
                CrystalModel.range(new SeedRange(0, 0, 0)));
        assertEquals(
                "Crystals: at most 0.01 % of the fat in stable ones; a temper needs 0.5 %.",
                CrystalModel.range(new SeedRange(0.0001, 0.00003, 0)));
    }

    /** The word turns at what a temper needs: a figure rounded onto it would contradict the word beside it. */
    @Test
    void besideWhatATemperNeedsItIsSaidOnWhichSide() {
        assertTrue(CrystalModel.range(new SeedRange(0.02, 0.01, 0.0047)).startsWith("Crystals: just under 0.5 to 2 %"));
        assertTrue(CrystalModel.range(new SeedRange(0.08, 0.01, 0.0052)).startsWith("Crystals: just over 0.5 to 8 %"));
        assertTrue(CrystalModel.range(new SeedRange(0.02, 0.0048, 0.001)).contains("best guess just under 0.5 %"));
    }

    @Test
    void everyMisgivingHasASentenceOfItsOwn() {
        Set<String> all = new HashSet<>();
        for (Misgiving misgiving : Misgiving.values()) all.add(CrystalModel.doubt(misgiving));
        assertEquals(Misgiving.values().length, all.size());
    }

    /** Nothing before the cool step; then one word with its limits, and the strip ends in the word that stands. */
    @Test
    void wordAndStripSayTheSameThroughAWholeBatch() {
        List<String> words = new ArrayList<>();
        int[] count = {0};
        Tapes.each(Tapes.OWN_WAY, snapshot -> {
            if (count[0]++ % 40 != 0) return;
            WatchPicture picture = WatchModel.picture(snapshot, LOOK);
            Crystals said = picture.crystals();
            List<Stretch> strip = picture.trace().crystals();
            if (snapshot.state().batch().phase() == Phase.MELT) {
                assertEquals(Crystals.NONE, said);
                return;
            }
            if (!said.isSaid()) return;
            assertEquals(CrystalModel.LIMITS.say(), said.limits());
            assertFalse(said.word().contains("%") || said.line().contains("%"), said.line());
            if (strip.isEmpty()) return;
            assertEquals(said.word(), strip.get(strip.size() - 1).words());
            for (int i = 1; i < strip.size(); i++)
                assertEquals(strip.get(i - 1).to(), strip.get(i).from());
            if (words.isEmpty() || !words.get(words.size() - 1).equals(said.word())) words.add(said.word());
        });
        assertTrue(words.size() >= 2, words::toString);
    }

    /** Asked where nobody said it and no water showed it; an answer ends it, and so does what is seen. */
    @Test
    void stirringIsAskedForWhereItIsOnlyAssumed() {
        SessionSnapshot cooling = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().batch().phase() == Phase.COOL
                        && Duration.between(
                                                s.state().batch().progress().since(),
                                                s.state().at())
                                        .toSeconds()
                                > 95);
        Temper temper = cooling.state().crystals().orElseThrow();
        assertEquals(
                "Is it being stirred? S: yes · S twice: left alone",
                question(cooling, new Temper(temper.watch(), StirWatch.NONE, temper.hold())));
        assertEquals(
                "", question(cooling, new Temper(temper.watch(), StirWatch.NONE.said(Stirring.STILL), temper.hold())));
        Temper unknown = new Temper(temper.watch(), StirWatch.NONE, temper.hold());
        assertEquals("", question(cooling, unknown, Asking.POINTLESS), "a replay has nobody to ask");
        StirWatch seen = new StirWatch(Optional.empty(), Optional.empty(), 130, 0);
        assertEquals("", question(cooling, new Temper(temper.watch(), seen, temper.hold())));
        StirWatch glimpsed = new StirWatch(Optional.empty(), Optional.empty(), 30, 0);
        assertEquals(
                "Is it being stirred? S: yes · S twice: left alone",
                question(cooling, new Temper(temper.watch(), glimpsed, temper.hold())),
                "half a minute is no habit");
        SessionSnapshot held =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().batch().phase() == Phase.SEED);
        assertEquals(
                "Is it being stirred? S: yes · S twice: left alone",
                question(held, unknown),
                "out of the water nothing will show it, so the question does not go and come again");
    }

    /** What the water showed for a moment is not said to have shown it. */
    @Test
    void whatWasSeenTooShortlyIsCalledAssumed() {
        SessionSnapshot cooling =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().batch().phase() == Phase.COOL);
        Temper temper = cooling.state().crystals().orElseThrow();
        assertTrue(why(cooling, temper, 130, 0).contains("as the water showed it before"));
        assertTrue(why(cooling, temper, 30, 0).contains("that is assumed"));
        assertTrue(why(cooling, temper, 130, 200).contains("that is assumed"), "it showed both");
        assertTrue(why(cooling, temper, 10, 130).contains("left alone, as the water showed it before"));
    }

    private static String why(SessionSnapshot snapshot, Temper temper, double stirredSeconds, double stillSeconds) {
        StirWatch stir = new StirWatch(Optional.empty(), Optional.empty(), stirredSeconds, stillSeconds);
        Temper seen = new Temper(temper.watch(), stir, temper.hold());
        return String.join(
                " ",
                new CrystalModel(seen, snapshot.state(), Asking.ANSWERED, KeyMap.USUAL)
                        .crystals("")
                        .why());
    }

    private static String question(SessionSnapshot snapshot, Temper temper) {
        return question(snapshot, temper, Asking.ANSWERED);
    }

    private static String question(SessionSnapshot snapshot, Temper temper, Asking asking) {
        return new CrystalModel(temper, snapshot.state(), asking, KeyMap.USUAL)
                .crystals("")
                .question();
    }

    /** Height, length, what was left, and one of three things to do with its reason. */
    @Test
    void whatSurvivedIsSaidWithAdvice() {
        SessionSnapshot after = Tapes.first(
                Tapes.OWN_WAY,
                s -> s.state()
                        .crystals()
                        .flatMap(c -> c.watch().overshoot())
                        .filter(o -> o.until().isPresent() && o.before().middle() > 0.001)
                        .isPresent());
        String words = survived(after).orElseThrow();
        assertTrue(
                words.matches(
                        "What survived \\d\\d\\.\\d °C \\(.* above 32\\.5\\): .* of the crystals, as the model has it( · .*)?"),
                words);
        assertFalse(words.contains("%"), words);
        Instant over = after.state()
                .crystals()
                .orElseThrow()
                .watch()
                .overshoot()
                .orElseThrow()
                .until()
                .orElseThrow();
        assertFalse(over.isAfter(after.state().at()));
    }

    private static Optional<String> survived(SessionSnapshot snapshot) {
        WatchPicture picture = WatchModel.picture(snapshot, LOOK);
        String words = picture.crystals().survived();
        if (!words.isEmpty()) assertEquals(words, picture.foot());
        return Optional.of(words).filter(w -> !w.isEmpty());
    }

    @Test
    void lessLeftIsNeverSaidToBeMore() {
        List<String> shares = List.of(
                "nearly all",
                "about three quarters",
                "about half",
                "about a third",
                "about a fifth",
                "about a tenth",
                "almost none");
        int before = 0;
        for (double left = 1; left >= 0; left -= 0.01) {
            String words = SurvivedWords.share(left);
            int now = -1;
            for (int i = 0; i < shares.size(); i++) if (words.startsWith(shares.get(i))) now = i;
            assertTrue(now >= before, words + " at " + left);
            before = now;
        }
        assertEquals(shares.size() - 1, before);
    }
}
