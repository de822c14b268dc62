package fifthform.monitor.replay;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.replay.Compared.Agreement;
import fifthform.monitor.replay.ReplayDesk.Step;
import fifthform.monitor.settings.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch at the desk: a demo batch whose maker lifted late, gone through as somebody would the day after. */
class ReplayDeskTest {
    private static final int COLUMNS = 800;

    /** In the demo batch: told to lift, lifted, at its highest; ns since the start, from its file. */
    private static final long TOLD_TO_LIFT = 1_788_029_199_000L;

    private static final long LIFTED = 1_884_154_199_000L;
    private static final long HIGHEST = 1_996_529_199_000L;

    @TempDir
    Path folder;

    private Path file() {
        return Desks.tape("demo-own-way", folder);
    }

    private static Compared line(ReplayPicture picture, String label) {
        return picture.compared().stream()
                .filter(c -> c.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void beforeAnythingIsComputedTheBatchStandsThere() {
        ReplayPicture picture = Desks.desk(file()).picture(COLUMNS);
        assertTrue(picture.headline().startsWith("Reached melt-out"), picture.headline());
        assertTrue(picture.chart().measured().seconds().length > 500);
        assertEquals(
                List.of("melt", "cool", "seed", "rewarm", "work"),
                picture.chart().phases().stream()
                        .map(ReplayChart.Stretch::words)
                        .toList());
        assertEquals("not computed yet", line(picture, "temperature").now());
        assertTrue(picture.agreement().contains("Being computed again"), picture.agreement());
        assertEquals(List.of("simulated"), picture.marks());
    }

    /** The demo session of the file format has an event of every kind. */
    @Test
    void theMomentWhenTheSeedWasLostIsMarkedInTheCurve() throws IOException {
        Path session = folder.resolve("demo.tempering.jsonl");
        try (InputStream bytes = ReplayDeskTest.class.getResourceAsStream("/sessions/demo.tempering.jsonl")) {
            Files.copy(Objects.requireNonNull(bytes), session);
        }
        List<ReplayChart.Mark> losses =
                Desks.desk(session).picture(COLUMNS).chart().losses();
        assertEquals(1, losses.size());
        assertEquals("Seed likely lost at 35.1 °C", losses.get(0).words());
        assertEquals(List.of(), Desks.desk(file()).picture(COLUMNS).chart().losses());
    }

    @Test
    void toldThenStandsBesideComputedNow() {
        ReplayDesk desk = Desks.computed(file());
        desk.seek(TOLD_TO_LIFT + 1_000_000_000L);
        ReplayPicture picture = desk.picture(COLUMNS);
        assertEquals("28.8 °C read", line(picture, "temperature").then());
        assertTrue(
                line(picture, "temperature").now().startsWith("29.0 °C in the chocolate, +3.9"),
                line(picture, "temperature").now());
        assertEquals(
                "turns at 31.4 °C, told with “lift now”",
                line(picture, "forecast").then());
        assertTrue(
                line(picture, "forecast").now().startsWith("lifted now it turns at 31."),
                line(picture, "forecast").now());
        assertEquals(
                new Compared("to do", "LIFT THE BOWL NOW", "LIFT THE BOWL NOW", Agreement.SAME),
                line(picture, "to do"));
        assertEquals("enough", line(picture, "crystals").now());
        assertEquals("All 45 things told then are told the same now.", picture.agreement());
        assertFalse(picture.chart().forecast().isEmpty());
    }

    @Test
    void whereTheTwoDifferItSaysSo() throws IOException {
        Path file = file();
        // As if the program of then had told of the lift a minute earlier, at another figure.
        String text = Files.readString(file)
                .replace("\"cue\":\"lift-now\",\"figure\":31.351", "\"cue\":\"off-now\",\"figure\":31.351");
        Files.writeString(file, text);
        ReplayDesk desk = Desks.computed(file);
        desk.seek(TOLD_TO_LIFT + 1_000_000_000L);
        ReplayPicture picture = desk.picture(COLUMNS);
        Compared line = line(picture, "to do");
        assertEquals(new Compared("to do", "OFF NOW", "LIFT THE BOWL NOW", Agreement.DIFFERS), line);
        assertTrue(
                picture.agreement().startsWith("Told then and computed now differ from number 23 of 45 on"),
                picture.agreement());
        assertTrue(desk.differs());
        assertTrue(picture.marks().contains("partly unreadable"), "the check of the file tells it too");
    }

    @Test
    void eachEventIsReachedOnceInBothDirections() {
        ReplayDesk desk = Desks.desk(file());
        List<Happening> all = desk.picture(COLUMNS).chart().rows();
        List<Integer> there = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            desk.nextEvent();
            there.add(desk.picture(COLUMNS).chart().chosen());
        }
        assertEquals(all.size(), new HashSet<>(there).size());
        desk.nextEvent();
        assertEquals("nothing after this", desk.picture(COLUMNS).said());
        List<Integer> back =
                new ArrayList<>(List.of(desk.picture(COLUMNS).chart().chosen()));
        for (int i = 1; i < all.size(); i++) {
            desk.previousEvent();
            back.add(0, desk.picture(COLUMNS).chart().chosen());
        }
        assertEquals(there, back);
        desk.seek(LIFTED - 1);
        desk.nextEvent();
        assertTrue(
                desk.picture(COLUMNS).said().endsWith("did · bowl on the table"),
                desk.picture(COLUMNS).said());
        assertEquals(LIFTED, desk.nanos());
    }

    @Test
    void playingGoesOnAsTimePasses() {
        ReplayDesk desk = Desks.desk(file());
        desk.startPace(OptionalDouble.of(10));
        desk.playOrPause();
        desk.pulse(Duration.ofSeconds(3).toNanos());
        assertEquals(Duration.ofSeconds(30).toNanos(), desk.nanos());
        for (int i = 0; i < 3; i++) desk.faster();
        desk.pulse(Duration.ofSeconds(1).toNanos());
        assertEquals(Duration.ofSeconds(130).toNanos(), desk.nanos());
        desk.playOrPause();
        desk.pulse(Duration.ofSeconds(5).toNanos());
        assertEquals(Duration.ofSeconds(130).toNanos(), desk.nanos());
        desk.toEnd();
        desk.playOrPause();
        assertEquals(0, desk.nanos(), "at its end it begins anew");
    }

    @Test
    void asFastAsPossibleWaitsForWhatIsComputedAndComesToTheEnd() {
        Path file = file();
        ReplayDesk waiting = Desks.desk(file);
        waiting.startPace(OptionalDouble.empty());
        waiting.playOrPause();
        for (int i = 0; i < 100; i++) waiting.pulse(1);
        assertEquals(0, waiting.nanos());
        ReplayDesk desk = Desks.computed(file);
        desk.startPace(OptionalDouble.empty());
        desk.playOrPause();
        int pulses = 0;
        while (desk.picture(COLUMNS).playing() && pulses++ < 1000) desk.pulse(1);
        assertEquals(desk.endNanos(), desk.nanos());
    }

    @Test
    void twoCursorsSayWhatLiesBetweenThem() {
        ReplayDesk desk = Desks.desk(file());
        desk.seek(1_737_000_000_000L);
        desk.setA();
        assertEquals(
                "A at 28:57, 26.3 °C; set B elsewhere",
                desk.picture(COLUMNS).chart().cursorWords());
        desk.seek(HIGHEST);
        desk.setB();
        assertEquals(
                "A to B: 4 min 19 s, +8.1 °C, rising by 1.88 °C a minute on average",
                desk.picture(COLUMNS).chart().cursorWords());
        desk.dropCursors();
        assertEquals("", desk.picture(COLUMNS).chart().cursorWords());
    }

    @Test
    void theSameInFahrenheit() {
        ReplayDesk desk = Desks.desk(file(), Units.FAHRENHEIT, WhatIfs.NONE);
        desk.seek(1_737_000_000_000L);
        desk.setA();
        desk.seek(HIGHEST);
        desk.setB();
        ReplayPicture picture = desk.picture(COLUMNS);
        assertEquals(
                "A to B: 4 min 19 s, +14.7 °F, rising by 3.39 °F a minute on average",
                picture.chart().cursorWords());
        assertEquals("melt-out 92.8", picture.chart().limits().get(0).words());
        assertEquals(92.84, picture.chart().limits().get(0).at(), 1e-9);
        assertTrue(picture.headline().endsWith("94.1 °F at most"), picture.headline());
    }

    @Test
    void zoomKeepsTheMomentAndTheHeight() {
        ReplayDesk desk = Desks.desk(file());
        desk.seek(LIFTED);
        ReplayChart before = desk.picture(COLUMNS).chart();
        for (int i = 0; i < 20; i++) desk.zoomIn();
        ReplayChart close = desk.picture(COLUMNS).chart();
        assertEquals(Span.SHORTEST, desk.span().length());
        assertTrue(desk.span().holds(LIFTED));
        assertEquals(before.bottomShown(), close.bottomShown());
        assertEquals(before.topShown(), close.topShown());
        desk.fitHeight();
        ReplayChart fitted = desk.picture(COLUMNS).chart();
        assertTrue(
                fitted.topShown() - fitted.bottomShown() < 5,
                "fitted to " + fitted.bottomShown() + " … " + fitted.topShown());
        desk.fitHeight();
        assertEquals(before.topShown(), desk.picture(COLUMNS).chart().topShown());
        desk.toStart();
        assertTrue(desk.span().holds(0), "what is looked at is on the screen");
        desk.showWhole();
        assertEquals(desk.endNanos(), desk.span().to());
    }

    @Test
    void alarmsTellTheirLead() {
        List<ListRow> alarms = Desks.desk(file()).picture(COLUMNS).alarms();
        assertEquals(
                "44 s before 32.0 °C was passed · stood 56 s",
                row(alarms, "prompt: Heading over the range").detail());
        assertTrue(alarms.stream().anyMatch(a -> a.detail().equals("stood to the end")), alarms.toString());
        // The probe lags: melt-out was told before it read 33.8, and from then on there is nothing to lead.
        ListRow near = row(alarms, "urgent: Close to melt-out");
        long lead = row(alarms, "urgent: Reached melt-out").nanos().orElseThrow()
                - near.nanos().orElseThrow();
        assertTrue(
                near.detail().startsWith(lead / 1_000_000_000L + " s before 33.8 °C was passed"),
                near.detail() + ", melt-out after " + lead / 1e9 + " s");
    }

    private static ListRow row(List<ListRow> rows, String words) {
        return rows.stream()
                .filter(row -> row.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aForecastSaysOfWhatItIs() {
        ReplayDesk desk = Desks.computed(file());
        desk.seek(1_860_000_000_000L);
        ReplayPicture heated = desk.picture(COLUMNS);
        assertEquals("if left", heated.chart().forecastWords());
        String said = line(heated, "forecast").now();
        assertTrue(said.matches("lifted now it turns at .*; left, it is at .* in 3 min"), said);
        desk.seek(2_700_000_000_000L);
        assertEquals("forecast", desk.picture(COLUMNS).chart().forecastWords());
        assertEquals("", desk.picture(COLUMNS).chart().still().forecastWords());
    }

    @Test
    void twoOthersCanBeLaidBesideAndMatchedAtEitherTurningPoint() {
        ReplayDesk desk = Desks.desk(file());
        Path other = Desks.tape("demo-unplugged", folder);
        desk.lay(other);
        ReplayPicture trough = desk.picture(COLUMNS);
        assertEquals(1, trough.chart().laid().size());
        double ours = lowest(trough.chart().measured(), 1400, 1800);
        double theirs = lowest(trough.chart().laid().get(0), 1400, 1800);
        assertEquals(ours, theirs, 4);
        desk.matchOtherwise();
        ReplayPicture lift = desk.picture(COLUMNS);
        assertTrue(
                lift.laid().get(0).detail().startsWith("matched at the lift: 3"),
                lift.laid().get(0).detail());
        assertTrue(Math.abs(lowest(lift.chart().laid().get(0), 1400, 1800) - theirs) > 20, "not moved");
        desk.lay(other);
        desk.lay(other);
        assertEquals(2, desk.picture(COLUMNS).chart().laid().size());
        desk.lay(folder.resolve("no-such.tempering.jsonl"));
        desk.takeAway();
        desk.lay(folder.resolve("no-such.tempering.jsonl"));
        assertTrue(
                desk.picture(COLUMNS).said().contains("There is no such file"),
                desk.picture(COLUMNS).said());
        assertEquals(List.of(), desk.picture(COLUMNS).laid());
    }

    private static double lowest(ReplayChart.Line line, double from, double to) {
        double at = Double.NaN;
        double low = Double.POSITIVE_INFINITY;
        for (int i = 0; i < line.seconds().length; i++) {
            if (!(line.seconds()[i] >= from && line.seconds()[i] <= to) || line.shown()[i] >= low) continue;
            low = line.shown()[i];
            at = line.seconds()[i];
        }
        return at;
    }

    @Test
    void aChosenWhatIfIsDrawnAndMarkedAsSimulated() {
        WhatIf earlier = new WhatIf(
                "lifted 18 s earlier",
                "turns at 31.9 °C",
                List.of(
                        new WhatIf.Point(Duration.ofSeconds(1800), 31, 30.8, 31.2),
                        new WhatIf.Point(Duration.ofSeconds(1900), 31.9, 31.5, 32.3)));
        ReplayDesk desk = Desks.desk(file(), Units.CELSIUS, (recording, last) -> List.of(earlier));
        desk.computeAll();
        assertEquals(List.of(), desk.picture(COLUMNS).chart().simulated());
        desk.chooseWhatIf(0);
        ReplayPicture picture = desk.picture(COLUMNS);
        assertEquals(32.3, picture.chart().simulated().get(1).highShown());
        assertEquals("lifted 18 s earlier", picture.whatIfs().get(0).words());
    }

    @Test
    void notesAreKeptBesideTheSessionWhichStaysAsItIs() throws IOException {
        Path file = file();
        byte[] before = Files.readAllBytes(file);
        ReplayDesk desk = Desks.desk(file);
        desk.seek(LIFTED);
        desk.note("  the phone rang ");
        desk.seek(HIGHEST);
        desk.mark();
        desk.changeNote(0, "the door bell rang");
        desk.takeNoteBack(1);
        ReplayDesk again = Desks.desk(file);
        List<ListRow> notes = again.picture(COLUMNS).notes();
        assertEquals(1, notes.size());
        assertEquals("the door bell rang", notes.get(0).words());
        assertEquals(Optional.of(LIFTED), notes.get(0).nanos());
        assertEquals("14:46:40", notes.get(0).time());
        assertEquals(
                4,
                Files.readAllLines(folder.resolve("demo-own-way.notes.jsonl")).size(),
                "each act is a line");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aDamagedNoteIsSaidAndKept() throws IOException {
        Path file = file();
        Path notes = folder.resolve("demo-own-way.notes.jsonl");
        ReplayDesk desk = Desks.desk(file);
        desk.note("first");
        Files.writeString(notes, "half a li", StandardOpenOption.APPEND);
        ReplayDesk again = Desks.desk(file);
        assertTrue(
                again.picture(COLUMNS).said().contains("line 2"),
                again.picture(COLUMNS).said());
        again.note("second");
        List<String> lines = Files.readAllLines(notes);
        assertEquals(3, lines.size());
        assertEquals("half a li", lines.get(1));
        assertEquals(
                List.of("first", "second"),
                Desks.desk(file).picture(COLUMNS).notes().stream()
                        .map(ListRow::words)
                        .toList());
    }

    @Test
    void whereNotesCannotBeWrittenThatIsSaid() throws IOException {
        Path file = file();
        Files.createDirectory(folder.resolve("demo-own-way.notes.jsonl"));
        ReplayDesk desk = Desks.desk(file);
        assertTrue(
                desk.picture(COLUMNS).said().contains("it is a folder"),
                desk.picture(COLUMNS).said());
        desk.note("lost?");
        assertTrue(
                desk.picture(COLUMNS).said().startsWith("Not saved:"),
                desk.picture(COLUMNS).said());
    }

    @Test
    void theTableHoldsTheVisibleSpan() throws IOException {
        ReplayDesk desk = Desks.desk(file());
        desk.seek(LIFTED);
        desk.note("=1+1, \"quoted\"");
        for (int i = 0; i < 7; i++) desk.zoomIn();
        StringWriter text = new StringWriter();
        desk.writeTable(text);
        List<String> lines = List.of(text.toString().split("\r\n"));
        assertEquals("time,elapsed (s),bowl (°C),bath (°C),row,words", lines.get(0));
        assertTrue(lines.contains("2026-02-03T14:46:40.314312Z,1884.154,,,did,bowl on the table"), text.toString());
        assertTrue(
                lines.contains("2026-02-03T14:46:40.314312Z,1884.154,,,note,\"'=1+1, \"\"quoted\"\"\""),
                text.toString());
        double first = Double.parseDouble(lines.get(1).split(",")[1]);
        double last = Double.parseDouble(lines.get(lines.size() - 1).split(",")[1]);
        assertTrue(
                first >= desk.span().from() / 1e9 - 0.001 && last <= desk.span().to() / 1e9 + 0.001,
                first + " " + last);
        assertTrue(
                lines.stream().anyMatch(l -> l.matches("2026-02-03T14:46:3[^,]*,18[0-9.]+,32\\.[0-9]+,,,")),
                text.toString());
    }

    @Test
    void aStepWithShiftIsAMinute() {
        ReplayDesk desk = Desks.desk(file());
        desk.ahead(Step.LONG);
        desk.ahead(Step.SHORT);
        desk.ahead(Step.SHORT);
        desk.back(Step.SHORT);
        assertEquals(Duration.ofSeconds(65).toNanos(), desk.nanos());
        desk.back(Step.LONG);
        desk.back(Step.LONG);
        assertEquals(0, desk.nanos());
    }
}
