package fifthform.monitor.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.terminal.LineScreen.Printed;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

class LineScreenTest {
    @Test
    void theFirstLinesExplainWhatIsWatched() {
        List<String> lines =
                LineScreen.START.next(Moments.melting(), Duration.ZERO).lines();
        String all = String.join("\n", lines);
        for (String wanted : List.of(
                "simulated",
                "With your own probe",
                "dark, 1 kg, steel bowl",
                "do now",
                "46.03 °C",
                "rising 0.5 °C a minute")) assertTrue(all.contains(wanted), wanted + " is missing from\n" + all);
        for (String line : lines) assertTrue(line.startsWith("0:00:00  "), line);
    }

    @Test
    void statusEveryTenSecondsWhileNothingHappens() {
        List<String> lines = lines(60, second -> Moments.cooling());
        assertEquals(List.of("0:00:10", "0:00:20", "0:00:30", "0:00:40", "0:00:50", "0:01:00"), times(lines));
    }

    @Test
    void newsComeAtOnceAndPutTheStatusOff() {
        List<String> lines = lines(20, second -> second < 4 ? Moments.cooling() : Moments.liftNow());
        assertEquals("0:00:04  phase: rewarm", lines.get(0));
        assertEquals("0:00:04  DO NOW: LIFT THE BOWL NOW; it goes on to 31.7 °C", lines.get(1));
        assertEquals(List.of("0:00:14"), times(lines.subList(lines.size() - 1, lines.size())));
    }

    /** A number is never without what it is worth, and its parts are told when they change, not with each flicker of the noise. */
    @Test
    void whatTheReadingIsWorthIsTold() {
        List<String> lines =
                lines(30, second -> trusted(second < 20 ? "noise 0.0" + second % 3 : "what the check left 0.2"));
        assertEquals(1, lines.stream().filter(line -> line.contains("made of")).count(), lines.toString());
        assertTrue(lines.get(lines.size() - 1).contains("31.24 °C within ±0.3 °C, rising"), lines.toString());
    }

    private static WatchPicture trusted(String part) {
        WatchPicture p = Moments.liftNow();
        Numeral n = p.numeral();
        return new WatchPicture(
                p.kitchen(),
                p.heading(),
                p.subject(),
                p.marks(),
                p.clock(),
                p.band(),
                new Numeral(n.whole(), n.hundredths(), n.unit(), n.stale(), n.doubt(), List.of("made of " + part)),
                p.rate(),
                p.outlooks(),
                p.ladder(),
                p.trace(),
                p.tiles(),
                p.foot(),
                p.alarms(),
                p.keys(),
                p.undo(),
                p.banner(),
                p.notice(),
                p.why(),
                WatchPicture.Crystals.NONE);
    }

    /** Who listens to lines cannot ask for the reason. */
    @Test
    void theReasonComesUnasked() {
        List<String> lines = lines(8, second -> second < 2 ? Moments.cooling() : reasoned(Moments.liftNow()));
        assertTrue(
                lines.contains("0:00:02  because: Turning point now about 31.6 °C. Lift within 4 s."),
                lines.toString());
        assertEquals(
                1, lines.stream().filter(line -> line.contains("because: ")).count(), lines.toString());
    }

    private static WatchPicture reasoned(WatchPicture p) {
        return new WatchPicture(
                p.kitchen(),
                p.heading(),
                p.subject(),
                p.marks(),
                p.clock(),
                p.band(),
                p.numeral(),
                p.rate(),
                p.outlooks(),
                p.ladder(),
                p.trace(),
                p.tiles(),
                p.foot(),
                p.alarms(),
                p.keys(),
                p.undo(),
                p.banner(),
                p.notice(),
                List.of("Turning point now about 31.6 °C.", "Lift within 4 s."),
                WatchPicture.Crystals.NONE);
    }

    @Test
    void alarmsComeAndGo() {
        List<String> lines = lines(8, second -> second < 2 || second >= 6 ? Moments.liftNow() : Moments.headingOver());
        assertTrue(
                lines.contains("0:00:02  PROMPT: Too hot soon: off the heat; it heads for 32.6 °C"), lines.toString());
        assertTrue(
                lines.contains("0:00:02  prompt alarm, new: Too hot soon: off the heat · it heads for 32.6 °C"),
                lines.toString());
        assertTrue(
                lines.contains("0:00:06  over: Too hot soon: off the heat · it heads for 32.6 °C"), lines.toString());
    }

    /** The window draws a line through the curve; who listens hears it, once. */
    @Test
    void aLossOfTheSeedIsTold() {
        List<String> lines = lines(4, second -> second < 2 ? Moments.cooling() : Moments.crystals());
        assertTrue(lines.contains("0:00:02  seed likely lost 13:43, 34.6 °C"), lines.toString());
        assertEquals(
                1, lines.stream().filter(line -> line.contains("likely lost")).count(), lines.toString());
    }

    @Test
    void aCountdownIsNoNews() {
        List<String> lines = lines(9, second -> counting("No reading for " + (6 + second) + " s"));
        assertEquals(List.of(), lines);
    }

    @Test
    void anOldNumberIsNeverPrintedAsTrue() {
        for (String line : LineScreen.START
                .next(Moments.unplugged(), Duration.ofMinutes(41))
                .lines()) if (line.contains("31.24")) assertTrue(line.contains("no true temperature"), line);
    }

    private static WatchPicture counting(String headline) {
        WatchPicture is = Moments.unplugged();
        return new WatchPicture(
                is.kitchen(),
                is.heading(),
                is.subject(),
                is.marks(),
                is.clock(),
                new Band(Tone.URGENT, Direction.NONE, headline, "check the plug", true),
                is.numeral(),
                is.rate(),
                is.outlooks(),
                is.ladder(),
                is.trace(),
                is.tiles(),
                is.foot(),
                is.alarms(),
                is.keys(),
                is.undo(),
                is.banner(),
                is.notice(),
                is.why(),
                WatchPicture.Crystals.NONE);
    }

    /** Lines after the first picture's own, asked each second. */
    private static List<String> lines(int seconds, IntFunction<WatchPicture> pictures) {
        LineScreen screen =
                LineScreen.START.next(pictures.apply(0), Duration.ZERO).after();
        List<String> lines = new ArrayList<>();
        for (int second = 1; second <= seconds; second++) {
            Printed printed = screen.next(pictures.apply(second), Duration.ofSeconds(second));
            screen = printed.after();
            lines.addAll(printed.lines());
        }
        return lines;
    }

    private static List<String> times(List<String> lines) {
        return lines.stream().map(line -> line.substring(0, 7)).distinct().toList();
    }
}
