package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of readings, invented, become sessions; what they do not say is asked for. */
class TableImportTest {
    @TempDir
    Path data;

    private Said take(String text, String... more) throws Exception {
        Path file = data.resolve("logger.csv");
        Files.writeString(file, text);
        String[] all = new String[more.length + 3];
        all[0] = "import";
        all[1] = "--data=" + data;
        System.arraycopy(more, 0, all, 2, more.length);
        all[all.length - 1] = file.toString();
        return Said.by(all);
    }

    private List<Path> sessions(String folder) throws Exception {
        if (!Files.isDirectory(data.resolve(folder))) return List.of();
        try (Stream<Path> files = Files.list(data.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(SessionFiles.ENDING)).toList();
        }
    }

    private Session only(String folder) throws Exception {
        List<Path> all = sessions(folder);
        assertEquals(1, all.size(), all.toString());
        return JournalReader.read(all.get(0)).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
    }

    private static List<Sample> samples(Session session, String probe) {
        return session.inputs()
                .map(Recorded::input)
                .filter(input -> input instanceof Sample)
                .map(Sample.class::cast)
                .filter(sample -> sample.probe().name().equals(probe))
                .toList();
    }

    @Test
    void aTableWithDateAndTimeIsASessionThatReplaysAlike() throws Exception {
        StringBuilder table = new StringBuilder("time,temperature_c,bath_c,event\n");
        for (int s = 0; s < 120; s++)
            table.append("2026-02-03T18:%02d:%02d+01:00,%.2f,48.5,%s%n"
                    .formatted(s / 60, s % 60, 45 + s / 100.0, s == 60 ? "stir" : ""));
        Said said = take(table.toString(), "--bowl", "demo steel", "--amount", "700");
        assertEquals(0, said.exit(), said.err());
        Session session = only("sent");
        assertEquals("2026-02-03-180000-dark", session.header().session());
        assertEquals(Instant.parse("2026-02-03T17:00:00Z"), session.header().start());
        assertEquals(120, samples(session, "bowl").size());
        assertEquals(46.19, samples(session, "bowl").get(119).tipCelsius(), 1e-9);
        assertEquals(48.5, samples(session, "bath").get(0).tipCelsius(), 1e-9);
        assertTrue(session.isClosed());
        assertEquals("demo steel", session.header().setup().bowl().id());
        assertEquals("csv", session.header().setup().bowlProbe().talk());
        assertEquals("logger.csv", session.header().setup().bowlProbe().place());
        // Quarter seconds between the readings, as a live session has them.
        assertEquals(
                3 * 119,
                session.inputs()
                        .map(Recorded::input)
                        .filter(TableImportTest::isTick)
                        .count());
        Said replay = Said.by(
                "replay", "--data=" + data, "--screen", "none", session.file().toString());
        assertEquals(0, replay.exit(), replay.out() + replay.err());
        assertTrue(take(table.toString()).out().startsWith("Here already: 2026-02-03-180000-dark"));
        assertEquals(1, sessions("sent").size());
    }

    private static boolean isTick(Input input) {
        return input instanceof fifthform.curves.input.Tick;
    }

    @Test
    void semicolonsAndDecimalCommasAreReadAndColumnsMayBeNamed() throws Exception {
        String table = "Zeit;Schokolade;Wasser\n0;113,9;118,4\n2,5;114,8;118,4\n";
        Said said = take(
                table,
                "--mine",
                "--start=2026-02-03T18:00",
                "--time=Zeit",
                "--temperature=Schokolade",
                "--bath=wasser",
                "--scale=f");
        assertEquals(0, said.exit(), said.err());
        List<Sample> bowl = samples(only("sessions"), "bowl");
        assertEquals(45.5, bowl.get(0).tipCelsius(), 1e-6);
        assertEquals(46, bowl.get(1).tipCelsius(), 1e-6);
        assertEquals(2500, bowl.get(0).at().until(bowl.get(1).at(), java.time.temporal.ChronoUnit.MILLIS));
        assertEquals(48, samples(only("sessions"), "bath").get(0).tipCelsius(), 1e-6);
    }

    /** Between commas a decimal comma is two cells; it is told and not guessed at. */
    @Test
    void decimalCommasBetweenCommasAreRefused() throws Exception {
        Said said = take("time_s,temperature_c\n0,45,5\n1,\"45,6\"\n2,45.7\n", "--start=2026-02-03T18:00");
        assertEquals(1, said.exit(), said.err());
        assertTrue(said.err().contains("line 2") && said.err().contains("decimals with a point"), said.err());
        assertTrue(said.err().contains("line 3") && said.err().contains("45.6"), said.err());
        assertEquals(List.of(), sessions("sent"));
    }

    @Test
    void badRowsAreNamedAndNothingIsTakenInUntilTheyMayBeLeftOut() throws Exception {
        String table = "time,temperature_c\n2026-02-03T18:00:00Z,45\nsoon,46\n2026-02-03T18:00:02Z,warm\n"
                + "2026-02-03T18:00:01Z,46\n2026-02-03T18:00:03Z,46.5\n";
        Said said = take(table);
        assertEquals(1, said.exit());
        for (String part : List.of("line 3", "line 4", "line 5", "nothing was taken in", "--skip-bad-rows"))
            assertTrue(said.err().contains(part), part + " in " + said.err());
        assertEquals(List.of(), sessions("sent"));
        assertEquals(1, take(table, "--skip-bad-rows").exit());
        assertEquals(
                List.of(45.0, 46.5),
                samples(only("sent"), "bowl").stream().map(Sample::tipCelsius).toList());
    }

    @Test
    void whatATableDoesNotSayIsAskedFor() throws Exception {
        take("time_s,temperature_c\n0,45\n").refuses(4, "not when they began", "Nothing was taken in", "--start");
        take("when,choc\n0,45\n").refuses(4, "no column time_s", "Nothing was taken in", "--temperature");
        take("time_s,temperature_c\n0,45\n", "--temperature=choc", "--start=2026-02-03T18:00")
                .refuses(4, "no column \"choc\"", "Name one of these: time_s, temperature_c", "--temperature");
        take("time_s,temperature_c\n0,\n", "--start=2026-02-03T18:00")
                .refuses(4, "no reading of the chocolate", "Nothing was taken in", "--temperature");
        take("time_s,temperature_c\n0,45\n", "--start=yesterday")
                .refuses(2, "--start was yesterday", "Nothing was taken in", "2026-01-31T10:15");
        Path odd = data.resolve("odd.csv");
        Files.write(odd, "time_s,temperature_c\n0,45\u00b0\n".getBytes(StandardCharsets.ISO_8859_1));
        Said.by("import", "--data=" + data, odd.toString())
                .refuses(4, "not text in UTF-8", "Nothing was taken in", "Save it as CSV");
        assertEquals(List.of(), sessions("sent"));
    }

    /** Our own export, read as any other program's: the same readings at the same times. */
    @Test
    void ourOwnExportComesBackReadingByReading() throws Exception {
        Path tape = GoldenSessionTest.tape("demo-own-way");
        Path sessions = Files.createDirectories(data.resolve("sessions"));
        Path session = Files.copy(tape, sessions.resolve(tape.getFileName()));
        Path table = data.resolve("export.csv");
        for (String units : List.of("c", "f")) {
            assertEquals(
                    0,
                    Said.by(
                                    "export",
                                    "--data=" + data,
                                    SessionFiles.name(session),
                                    "--as=csv",
                                    "--to=900",
                                    "--units=" + units,
                                    "--force",
                                    "--out=" + table)
                            .exit());
            Path to = data.resolve(units);
            Said said = Said.by("import", "--data=" + to, table.toString());
            assertEquals(0, said.exit(), said.err());
            List<Path> came = Files.list(to.resolve("sent"))
                    .filter(f -> f.toString().endsWith(SessionFiles.ENDING))
                    .toList();
            Session back = JournalReader.read(came.get(0)).fold(s -> s, problems -> null);
            Session then = JournalReader.read(session).fold(s -> s, problems -> null);
            for (String probe : List.of("bowl", "bath")) {
                List<Sample> theirs = samples(then, probe).stream()
                        .filter(s -> !s.at().isAfter(then.header().start().plusSeconds(900)))
                        .toList();
                List<Sample> ours = samples(back, probe);
                assertEquals(theirs.size(), ours.size(), probe);
                assertFalse(ours.isEmpty());
                for (int i = 0; i < ours.size(); i++) {
                    assertEquals(theirs.get(i).at(), ours.get(i).at());
                    assertEquals(theirs.get(i).tipCelsius(), ours.get(i).tipCelsius(), 1e-4);
                }
            }
        }
    }
}
