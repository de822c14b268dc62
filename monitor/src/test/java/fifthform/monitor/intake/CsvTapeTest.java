package fifthform.monitor.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Role;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTapeTest {
    @Test
    void readsTimesAndTemperatures() throws IOException {
        List<CsvRow> rows = rows("time_s,temperature_c\n0,45.5\n0.50,45.25\n812.400000001,31\n");
        assertEquals(
                List.of("0", "0.50", "812.400000001"),
                rows.stream().map(CsvRow::timeText).toList());
        assertEquals(Instant.EPOCH.plusNanos(812_400_000_001L), rows.get(2).at());
        assertEquals(4, rows.get(2).line());
        assertEquals(List.of(sample(0, CsvTape.BOWL, 45.5, 0.1)), rows.get(0).inputs());
        assertEquals(
                List.of(sample(0.5, CsvTape.BOWL, 45.25, 0.01)), rows.get(1).inputs());
    }

    @Test
    void readsAllItsColumnsAndIgnoresOthers() throws IOException {
        String text = """
                # a remark
                "Time_S", room_c ,batch,event,bath_c,temperature_c
                0,21,"a, ""b"" c",on-bath,40.0,30.0

                1,,x,"stir seed",,30.5
                """;
        CsvTape tape = open(text).fold(t -> t, problems -> fail("" + problems));
        assertEquals(List.of(Role.BOWL, Role.BATH, Role.ROOM), tape.roles());
        List<CsvRow> rows = all(tape);
        assertEquals(
                List.of(
                        new BowlMoved(at(0), Place.BATH),
                        sample(0, CsvTape.ROOM, 21, 1),
                        sample(0, CsvTape.BATH, 40, 0.1),
                        sample(0, CsvTape.BOWL, 30, 0.1)),
                rows.get(0).inputs());
        assertEquals(
                List.of(
                        new StirringSaid(at(1), StirringSaid.Stirring.STIRRED),
                        new SeedAdded(at(1), 0),
                        sample(1, CsvTape.BOWL, 30.5, 0.1)),
                rows.get(1).inputs());
    }

    @Test
    void takesFahrenheit() throws IOException {
        List<Input> inputs =
                rows("time_s,temperature_f\n0,212.0\n1,88\n").get(0).inputs();
        assertEquals(List.of(sample(0, CsvTape.BOWL, 100, 0.1 * 5 / 9)), inputs);
    }

    @Test
    void knowsEveryWordOfTheEventColumn() {
        List<MakerAction> actions = CsvEvents.WORDS.stream()
                .map(word -> CsvEvents.action(word, at(3)).orElseThrow())
                .toList();
        assertEquals(
                List.of(
                        new BowlMoved(at(3), Place.BATH),
                        new BowlMoved(at(3), Place.TABLE),
                        new BowlMoved(at(3), Place.COLD_WATER),
                        new BowlMoved(at(3), Place.TABLE),
                        new StirringSaid(at(3), StirringSaid.Stirring.STIRRED),
                        new StirringSaid(at(3), StirringSaid.Stirring.STILL),
                        new SeedAdded(at(3), 0),
                        new ProbeTakenOut(at(3)),
                        new ProbePutBack(at(3))),
                actions);
    }

    @Test
    void noReadingIsNoInputAndAFailedOneIsAFault() throws IOException {
        List<CsvRow> rows = rows("time_s,temperature_c\n0,\n1,NaN\n2\n3,open\n4,999\n5,\"31,5\"\n");
        for (CsvRow row : rows.subList(0, 3)) {
            assertEquals(List.of(), row.inputs());
            assertEquals(List.of(), row.problems());
        }
        assertEquals(
                List.of(new ProbeFault(at(3), CsvTape.BOWL, ProbeFault.Cause.GARBLED)),
                rows.get(3).inputs());
        assertTrue(rows.get(3).problems().get(0).toString().contains("line 5: temperature_c is \"open\""));
        assertEquals(
                List.of(new ProbeFault(at(4), CsvTape.BOWL, ProbeFault.Cause.OUT_OF_RANGE)),
                rows.get(4).inputs());
        assertTrue(rows.get(4).problems().get(0).toString().contains("line 6: temperature_c is 999, which no kitchen"));
        assertTrue(rows.get(5).problems().get(0).whatToDo().contains("31.5"));
    }

    @Test
    void aRowThatCannotBePlacedInTimeIsSaidAndLeftOut() throws IOException {
        CsvTape tape =
                open("time_s,temperature_c\n5,31\n4.9,32\nnow,33\n5,34\n6,35\n").fold(t -> t, p -> fail("" + p));
        List<String> said = new ArrayList<>();
        for (Optional<Parsed<CsvRow>> row = tape.next(); row.isPresent(); row = tape.next()) {
            said.add(row.get().fold(CsvRow::timeText, Object::toString));
        }
        assertEquals(5, said.size());
        assertTrue(said.get(1).contains("line 3: Its time 4.9 s is before that of the row above (5 s)"), said.get(1));
        assertTrue(said.get(2).contains("line 4: time_s is \"now\""), said.get(2));
        assertEquals(List.of("5", "5", "6"), List.of(said.get(0), said.get(3), said.get(4)));
    }

    @Test
    void aValueCutInTwoByADecimalCommaIsRefusedAndNotReadHalf() throws IOException {
        CsvTape tape = CsvTape.open(
                        "demo.csv", new StringReader("time_s,temperature_c\n0,30,5\n1,30.5,\n"), Instant.EPOCH)
                .fold(t -> t, p -> fail("" + p));
        String said = tape.next().orElseThrow().fold(row -> "accepted " + row, Object::toString);
        assertTrue(said.contains("It has 3 cells"), said);
        CsvRow blankAtTheEnd = tape.next().orElseThrow().fold(row -> row, p -> fail("" + p));
        assertEquals(List.of(sample(1, CsvTape.BOWL, 30.5, 0.1)), blankAtTheEnd.inputs());
    }

    @Test
    void anUnknownEventIsSaidAndTheRestOfTheRowIsUsed() throws IOException {
        CsvRow row = rows("time_s,temperature_c,event\n0,31,off-bat\n").get(0);
        assertEquals(1, row.inputs().size());
        assertTrue(row.problems().get(0).whatToDo().startsWith("Did you mean \"off-bath\"?"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                      | It is empty",
                "time_s;temperature_c                    | separated by semicolons",
                "time_s,temperature                      | If \"temperature\" is it, name it temperature_c",
                "seconds,temperature_c                   | no column time_s",
                "time_s,temperature_c,temperature_f      | both temperature_c and temperature_f",
                "time_s,temperature_c,time_s             | The column time_s is there twice",
            })
    void aHeaderThatCannotBeUsedIsRefused(String header, String words) throws IOException {
        String said = open(header + (header.isEmpty() ? "" : "\n0,31\n")).fold(t -> "accepted", Object::toString);
        assertTrue(said.contains(words), said);
    }

    @ParameterizedTest
    @CsvSource({"+5,5", ".5,0.5", "5.,5", "007,7", "1e2,1e2", "-1.50,-1.50"})
    void aTimeIsAlwaysAJsonNumber(String cell, String text) throws IOException {
        assertEquals(
                text, rows("time_s,temperature_c\n" + cell + ",31\n").get(0).timeText());
    }

    /** Another program writes a row and waits for the answer before it writes the next. */
    @Test
    void eachRowComesAsSoonAsItsLineHasEnded() throws IOException {
        PipedOutputStream program = new PipedOutputStream();
        Reader end = new InputStreamReader(new PipedInputStream(program), StandardCharsets.UTF_8);
        say(program, "time_s,temperature_c\n");
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            CsvTape tape = CsvTape.open("-", end, Instant.EPOCH).fold(t -> t, p -> fail("" + p));
            for (int second = 0; second < 5; second++) {
                say(program, second + ",31.5" + (second % 2 == 0 ? "\n" : "\r\n"));
                String text = tape.next().orElseThrow().fold(CsvRow::timeText, Object::toString);
                assertEquals("" + second, text);
            }
            program.close();
            assertEquals(Optional.empty(), tape.next());
        });
    }

    @Test
    void whatCannotBeReadAnyFurtherIsAnIoException() throws IOException {
        Reader failing = new FilterReader(new StringReader("time_s,temperature_c\n0,31\n1,31")) {
            @Override
            public int read(char[] buffer, int offset, int length) throws IOException {
                int count = super.read(buffer, offset, length);
                if (count < 0) throw new IOException("stick pulled out");
                return count;
            }
        };
        CsvTape tape = CsvTape.open("x", failing, Instant.EPOCH).fold(t -> t, p -> fail("" + p));
        assertTrue(tape.next().isPresent());
        assertEquals(
                "stick pulled out", assertThrows(IOException.class, tape::next).getMessage());
    }

    private static void say(PipedOutputStream program, String line) throws IOException {
        program.write(line.getBytes(StandardCharsets.UTF_8));
        program.flush();
    }

    private static Parsed<CsvTape> open(String text) throws IOException {
        return CsvTape.open("x.csv", new StringReader(text), Instant.EPOCH);
    }

    private static List<CsvRow> rows(String text) throws IOException {
        return all(open(text).fold(tape -> tape, problems -> fail(problems.toString())));
    }

    private static List<CsvRow> all(CsvTape tape) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        for (Optional<Parsed<CsvRow>> row = tape.next(); row.isPresent(); row = tape.next()) {
            rows.add(row.get().fold(r -> r, (List<? extends Problem> problems) -> fail(problems.toString())));
        }
        return rows;
    }

    /** Standard deviation of a value rounded to a step: step / √12 (GUM, JCGM 100:2008, 4.3.7 and F.2.2.1). */
    private static Sample sample(double seconds, ProbeId probe, double celsius, double stepKelvin) {
        return new Sample(
                at(seconds),
                probe,
                celsius,
                stepKelvin / Math.sqrt(12),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Instant at(double seconds) {
        return Instant.EPOCH.plusMillis(Math.round(seconds * 1000));
    }
}
