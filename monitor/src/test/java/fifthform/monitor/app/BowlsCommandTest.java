package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BowlsCommandTest {
    @TempDir
    Path home;

    private Said bowls(String words) {
        return Said.by(Stream.concat(
                        Stream.of("bowls", "--data", home.toString()),
                        words.isEmpty() ? Stream.empty() : Stream.of(words.split(" ")))
                .toArray(String[]::new));
    }

    @Test
    void aBowlIsAddedSetShownResetAndForgotten() {
        assertTrue(bowls("").out().contains("No bowl is known yet"));
        Said added = bowls("add steel --material steel --name Steel-1kg");
        assertEquals(0, added.exit(), added.err());
        assertTrue(added.out().contains("Steel-1kg  (id steel, steel)"), added.out());

        Said set = bowls("set steel --amount 800 --coast 0.7");
        assertTrue(set.out().contains("800 g: coasts about 0.7 °C at 1.0 °C/min"), set.out());
        assertTrue(set.out().contains("set by hand"), set.out());
        assertTrue(bowls("show Steel-1kg --units f").out().contains("coasts about 1.3 °F at 1.8 °F/min"));
        String json = bowls("show steel --json").out();
        assertTrue(json.startsWith("{\"bowl\":\"steel\",\"name\":\"Steel-1kg\",\"material\":\"steel\""), json);
        assertTrue(json.contains("\"amount_g\":800,\"coast_s\":42,\"log_spread\":0.25,\"lifts\":1"), json);

        assertTrue(bowls("edit steel --name Thin --material aluminium").out().contains("Thin  (id steel, aluminium)"));
        assertEquals(1, bowls("--json").out().lines().count());
        assertTrue(bowls("reset steel").out().contains("Nothing was learned of it yet."));
        Said gone = bowls("forget steel");
        assertEquals(0, gone.exit(), gone.err());
        assertTrue(Files.exists(home.resolve("bowls/steel.jsonl.forgotten")));
        assertFalse(Files.exists(home.resolve("bowls/steel.jsonl")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    show copper                       | 2 | There is no bowl "copper"       | Nothing was done. | Known: steel.
                    add steel                         | 1 | There is a bowl "steel" already | Nothing was done. | bowls edit steel
                    add ***                           | 2 | cannot be the name of a bowl    | Nothing was done. | Give 1 to 60
                    add big --material wood           | 2 | --material was "wood".          | Nothing was done. | Say one of: steel
                    edit steel                        | 2 | Neither --name nor --material   | Nothing was done. | Say what
                    set steel --coast 9               | 2 | --coast was 9.                  | Nothing was done. | Give 0.1 to 5
                    set steel --coast NaN             | 2 | --coast was NaN.                | Nothing was done. | Give 0.1 to 5
                    set steel --coast 1 --amount 2    | 2 | --amount was 2.                 | Nothing was done. | Give 10 to 20000
                    forget copper                     | 2 | There is no bowl "copper"       | Nothing was done. | Known: steel.
                    """)
    void whatCannotBeDoneIsSaid(String words, int code, String what, String means, String toDo) {
        bowls("add steel --material steel");
        bowls(words).refuses(code, what, means, toDo);
        assertTrue(bowls("show steel").out().contains("Nothing was learned of it yet."));
    }

    /** Amounts that near are one: that another figure goes is said. */
    @Test
    void whatIsSetByHandSaysWhatItReplaces() {
        bowls("add steel --material steel");
        assertFalse(bowls("set steel --amount 800 --coast 0.7").out().contains("replaces"));
        String said = bowls("set steel --amount 700 --coast 0.6").out();
        assertTrue(said.contains("This replaces 800 g: coasts about 0.7 °C at 1.0 °C/min"), said);
        assertTrue(said.contains("Amounts within 15 % of each other count as one."), said);
        String again = bowls("set steel --amount 700 --coast 0.5 --json").out();
        assertTrue(again.contains("\"said\":\"This replaces 700 g: coasts about 0.6 °C"), again);
        assertFalse(again.contains("15 %"), again);
        assertFalse(bowls("set steel --amount 2000 --coast 0.9").out().contains("replaces"));
    }

    @Test
    void aFileWhereTheFolderShouldBeIsSaid() throws Exception {
        Path file = Files.writeString(home.resolve("bowls"), "in the way\n");
        Said said = bowls("");
        assertEquals(1, said.exit(), said.err());
        assertEquals("", said.out());
        assertTrue(said.err().contains("This is a file, and the folder of the bowls should be here"), said.err());
        assertTrue(said.err().contains("Move the file to another place"), said.err());
        assertEquals(4, bowls("add steel").exit());
        assertEquals("in the way\n", Files.readString(file));
    }

    /** A name is printed on every screen: it must not move the terminal's cursor or change its colours. */
    @Test
    void aNameThatATerminalWouldObeyIsRefused() {
        bowls("add glass\u001B[31m")
                .refuses(2, "\"glass?[31m\" cannot be the name of a bowl", "Nothing was done.", "Give 1 to 60");
        assertFalse(Files.exists(home.resolve("bowls")));
    }

    @Test
    void aDamagedFileIsSaidAndTheRestStands() throws Exception {
        bowls("add glass");
        Files.writeString(home.resolve("bowls/steel.jsonl"), "{\"format\":1\n");
        Said said = bowls("");
        assertEquals(1, said.exit());
        assertTrue(said.out().contains("glass"), said.out());
        assertTrue(said.err().contains("kept as steel.jsonl.unreadable"), said.err());
    }
}
