package fifthform.monitor.proofs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Fat;
import fifthform.curves.proof.Bend;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.TemperClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CupsTest {
    private static final Instant AT = Instant.parse("2026-02-01T10:00:00Z");

    @TempDir
    Path home;

    private Cups cups() {
        return new Cups(home.resolve("cups"));
    }

    private static KeptCup foil() {
        return KeptCup.named("dark", "foil")
                .withGrams(11.5)
                .with(run(3.9))
                .with(run(4.1))
                .with(curve("one", KeptCurve.Mark.GOOD))
                .with(curve("two", KeptCurve.Mark.NONE));
    }

    private static CupRun run(double tau) {
        return new CupRun(AT, tau, 1.12, Optional.of(new Bend(1.5, 14.1, 310)), "demo-run");
    }

    private static KeptCurve curve(String proof, KeptCurve.Mark mark) {
        return new KeptCurve(
                AT,
                proof,
                Optional.of("demo-session"),
                TemperClass.IN_TEMPER,
                Optional.of(new Bend(0.2, 20.5, 200)),
                mark);
    }

    @Test
    void aFileWhereTheFolderShouldBeIsSaid() throws IOException {
        Files.writeString(home.resolve("cups"), "a note");
        Cups.Loaded loaded = cups().load();
        assertEquals(List.of(), loaded.cups());
        assertTrue(
                loaded.problems().toString().contains("This is a file"),
                loaded.problems().toString());
    }

    @Test
    void whatIsKeptIsReadAgain() throws IOException {
        cups().keep(foil());
        cups().keep(KeptCup.named("milk", "foil"));
        Cups.Loaded loaded = cups().load();
        assertEquals(List.of(), loaded.problems());
        assertEquals(Optional.of(foil()), loaded.find("dark", "foil"));
        assertEquals(Optional.of(foil()), loaded.holding("two"));
        assertEquals(Optional.empty(), loaded.find("dark", "steel"));
    }

    @Test
    void oneDamagedLineCostsNoOtherAndIsKeptAside() throws IOException {
        cups().keep(foil());
        Path file = home.resolve("cups/dark.foil.jsonl");
        String before = Files.readString(file);
        Files.writeString(
                file,
                before.replace(
                        "\"told\":\"in-temper\",\"slope_k_per_min\":0.2",
                        "\"told\":\"lovely\",\"slope_k_per_min\":0.2"));
        Cups.Loaded loaded = cups().load();
        assertEquals(1, loaded.problems().size());
        assertTrue(loaded.problems().get(0).toString().contains("is kept as dark.foil.jsonl.unreadable"));
        KeptCup left = loaded.find("dark", "foil").orElseThrow();
        assertEquals(2, left.runs().size());
        assertTrue(Files.readString(home.resolve("cups/dark.foil.jsonl.unreadable"))
                .contains("lovely"));
        assertEquals(List.of(), cups().load().problems(), "said once");
    }

    @Test
    void aFileThatIsNoCupIsSetAside() throws IOException {
        cups().keep(foil());
        Path file = home.resolve("cups/dark.foil.jsonl");
        Files.writeString(file, "{\"format\":9}\n");
        assertEquals(1, cups().load().problems().size());
        assertFalse(Files.exists(file));
        assertTrue(Files.exists(home.resolve("cups/dark.foil.jsonl.unreadable")));
    }

    /** The project's crystal model, section 10: two runs within a tenth, else neither counts. */
    @Test
    void twoRunsThatDifferCalibrateNothing() {
        assertEquals(4.0, foil().traits().orElseThrow().tauMinutes(), 1e-9);
        KeptCup apart = KeptCup.named("dark", "foil").with(run(3.9)).with(run(4.5));
        assertEquals(Optional.empty(), apart.traits());
        assertEquals(Measure.Basis.FROM_MASS, apart.measure(Fat.DARK, 0).basis());
        // A third that agrees with the second mends it.
        assertEquals(4.45, apart.with(run(4.4)).traits().orElseThrow().tauMinutes(), 1e-9);
    }

    @Test
    void fromThreeGoodCurvesOnTheyAreTheMeasure() {
        KeptCup two = foil().marked("two", KeptCurve.Mark.GOOD);
        assertTrue(two.measure(Fat.DARK, 0).isProvisional());
        KeptCup three = two.with(curve("three", KeptCurve.Mark.GOOD));
        assertEquals(3, three.measure(Fat.DARK, 0).good().orElseThrow().count());
        assertTrue(three.marked("one", KeptCurve.Mark.BAD).measure(Fat.DARK, 0).isProvisional());
    }

    /** While a sample cools for a quarter of an hour, an earlier one may be marked: the mark stays, and so does the sample. */
    @Test
    void whatCameInBetweenIsNotLost() throws IOException {
        cups().keep(foil());
        KeptCup atTheBeginning = cups().load().find("dark", "foil").orElseThrow();
        cups().change(atTheBeginning, cup -> cup.marked("two", KeptCurve.Mark.BAD));
        KeptCup after = cups().change(atTheBeginning, cup -> cup.with(curve("three", KeptCurve.Mark.NONE)));
        assertEquals(Optional.of(after), cups().load().find("dark", "foil"));
        assertEquals(
                List.of(KeptCurve.Mark.GOOD, KeptCurve.Mark.BAD, KeptCurve.Mark.NONE),
                after.curves().stream().map(KeptCurve::mark).toList());
    }

    @Test
    void aCupThatIsNotKeptYetIsChangedItself() throws IOException {
        KeptCup after = cups().change(foil(), cup -> cup.withGrams(10));
        assertEquals(Optional.of(after), cups().load().find("dark", "foil"));
    }

    @Test
    void aByteThatIsNoTextCostsItsLineOnly() throws IOException {
        cups().keep(foil());
        Path file = home.resolve("cups").resolve("dark.foil.jsonl");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, '\n'}, StandardOpenOption.APPEND);
        Cups.Loaded loaded = cups().load();
        assertEquals(Optional.of(foil()), loaded.find("dark", "foil"));
        assertTrue(
                loaded.problems().toString().contains("it is not a JSON object"),
                loaded.problems().toString());
    }
}
