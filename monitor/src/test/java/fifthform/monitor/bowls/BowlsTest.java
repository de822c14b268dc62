package fifthform.monitor.bowls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Usual;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BowlsTest {
    private static final Instant AT = Instant.parse("2026-02-01T10:00:00Z");
    private static final BowlAnswers ANSWERS =
            new BowlAnswers(new Usual(4, 3.2, 0.01), new Usual(3, -2.1, 0.02), Usual.NEVER);

    @TempDir
    Path home;

    private static Taught taught(OptionalDouble grams, double seconds, Instant at) {
        return new Taught(
                grams, Optional.of(new LearnedCoast(seconds, 0.2, 7)), ANSWERS, 4, at, Optional.of("2026-demo"));
    }

    private static KeptBowl steel() {
        return KeptBowl.named("Steel, 1 kg", BowlMaterial.STEEL)
                .taught(taught(OptionalDouble.of(800), 42, AT))
                .taught(taught(OptionalDouble.empty(), 60, AT.minusSeconds(60)));
    }

    private Bowls bowls() {
        return new Bowls(home.resolve("bowls"));
    }

    @Test
    void whatIsKeptIsReadAgain() throws IOException {
        bowls().keep(steel());
        bowls().keep(KeptBowl.named("Big glass", BowlMaterial.GLASS));

        Bowls.Loaded loaded = bowls().load();

        assertEquals(List.of(), loaded.problems());
        assertEquals(List.of(KeptBowl.named("Big glass", BowlMaterial.GLASS), steel()), loaded.bowls());
        assertEquals(Optional.of(steel()), loaded.find("Steel, 1 kg"));
        assertEquals(Optional.of(steel()), loaded.find("steel-1-kg"));
        assertEquals(Optional.empty(), loaded.find("copper"));
        try (var files = Files.list(home.resolve("bowls"))) {
            assertEquals(2, files.count(), "nothing half written is left");
        }
    }

    @Test
    void aDamagedFileIsKeptAsideAndSaid() throws IOException {
        bowls().keep(steel());
        Path file = home.resolve("bowls/steel-1-kg.jsonl");
        Files.writeString(file, Files.readString(file).replace("\"material\":\"steel\"", "\"material\":\"mud\""));

        Bowls.Loaded loaded = bowls().load();

        assertEquals(List.of(), loaded.bowls());
        assertEquals(1, loaded.problems().size());
        assertTrue(loaded.problems().get(0).toString().contains("is kept as steel-1-kg.jsonl.unreadable"));
        assertTrue(Files.exists(home.resolve("bowls/steel-1-kg.jsonl.unreadable")));
        assertEquals(List.of(), bowls().load().problems(), "said once");
    }

    @Test
    void oneDamagedLineCostsNoOtherAmount() throws IOException {
        bowls().keep(steel());
        Path file = home.resolve("bowls/steel-1-kg.jsonl");
        Files.writeString(file, Files.readString(file).replace("\"coast_s\":42", "\"coast_s\":9e9"));

        String damaged = Files.readString(file) + "rubbish\n";
        Files.writeString(file, damaged);

        Bowls.Loaded loaded = bowls().load();

        List<Taught> rest = loaded.bowls().get(0).taught();
        assertEquals(steel().taught().size() - 1, rest.size());
        assertTrue(steel().taught().containsAll(rest), rest.toString());
        String said = loaded.problems().get(0).toString();
        assertTrue(said.contains("line 3: ") && said.contains("line 4: ") && !said.contains("line 2: "), said);
        assertTrue(said.contains("is kept as steel-1-kg.jsonl.unreadable"), said);
        assertEquals(damaged, Files.readString(home.resolve("bowls/steel-1-kg.jsonl.unreadable")), "nothing is lost");
        Bowls.Loaded again = bowls().load();
        assertEquals(List.of(), again.problems(), "said once");
        assertEquals(loaded.bowls(), again.bowls());
    }

    @Test
    void aFileOfANewerProgramIsNotUsed() throws IOException {
        bowls().keep(steel());
        Path file = home.resolve("bowls/steel-1-kg.jsonl");
        Files.writeString(file, Files.readString(file).replace("\"format\":1", "\"format\":2"));
        assertTrue(bowls().load().problems().get(0).toString().contains("newer program"));
    }

    @Test
    void aForgottenBowlIsGoneButItsFileIsNot() throws IOException {
        bowls().keep(steel());
        Path kept = bowls().forget(steel());
        assertTrue(Files.exists(kept));
        assertEquals(List.of(), bowls().load().bowls());
    }

    @Test
    void theSameAmountIsTakenAsItIs() {
        LearnedCoast coast = steel().with(OptionalDouble.of(850)).learned().orElseThrow();
        assertEquals(new LearnedCoast(42, 0.2, 7), coast);
        assertEquals(ANSWERS, steel().with(OptionalDouble.of(850)).answers());
    }

    /** Four times the chocolate coasts about a quarter further, and is known less well. */
    @Test
    void anotherAmountIsScaledAndLessSure() {
        LearnedCoast coast = steel().with(OptionalDouble.of(3200)).learned().orElseThrow();
        assertEquals(42 * 1.26, coast.coastSeconds(), 0.1);
        assertEquals(Math.hypot(0.2, 0.2 * Math.log(4)), coast.logSpread(), 1e-6);
        assertEquals(BowlAnswers.NONE, steel().with(OptionalDouble.of(3200)).answers(), "not what it is held against");
    }

    @Test
    void anUnsaidAmountHasItsOwnLine() {
        assertEquals(
                60, steel().with(OptionalDouble.empty()).learned().orElseThrow().coastSeconds());
        KeptBowl only = KeptBowl.named("a", BowlMaterial.STEEL).taught(taught(OptionalDouble.of(800), 42, AT));
        LearnedCoast latest = only.with(OptionalDouble.empty()).learned().orElseThrow();
        assertEquals(42, latest.coastSeconds());
        assertTrue(latest.logSpread() > 0.25);
    }

    @Test
    void namesBecomeFileNames() {
        assertEquals("steel-1-kg", KeptBowl.idOf("Steel, 1 kg"));
        assertEquals("grosse-schussel", KeptBowl.idOf("Große Schüssel".replace("ß", "ss")));
        assertFalse(KeptBowl.isId(KeptBowl.idOf("../..")));
        assertThrows(IllegalArgumentException.class, () -> KeptBowl.named("..", BowlMaterial.STEEL));
    }
}
