package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.session.Tapes;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip in the set-up is said before the batch begins; what is only a kitchen of its own is left alone. */
class SetupRemarksTest {
    private static final Recipe RECIPE = Tapes.start(Tapes.UNPLUGGED).setup().recipe();

    @TempDir
    Path home;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    20 |      |       | --bath was 20 °C. Water so cool cannot warm the chocolate to its working range, 31 to 32 °C.
                    32 |      |       | --bath was 32 °C.
                    90 |      |       | --bath was 90 °C. Over water so hot
                       | 50   |       | --amount was 50 g. So little
                       | 15000|       | --amount was 15000 g. So much
                       |      | 20000 | --seed was 20000 g. So much seed
                       | 800  | 600   | --seed was 600 g for 800 g of chocolate. So much seed
                    """)
    void whatIsOddIsSaidWithWhatToDo(Double bath, Double amount, Double seed, String begins) {
        List<String> said = said(bath, amount, seed);
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.get(0).startsWith(begins), said.get(0));
        assertTrue(said.get(0).matches(".*(start again|Let it cool).*"), said.get(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    38 | 800  | 8
                    55 | 5000 | 1500
                    36 | 200  |
                       |      | 300
                    """)
    void whatIsUsualIsNotSpokenOf(Double bath, Double amount, Double seed) {
        assertEquals(List.of(), said(bath, amount, seed));
    }

    @Test
    void theWatchingSaysItAndBeginsAllTheSame() {
        Said said = Said.by(
                "watch",
                "--probe",
                "practice",
                "--screen",
                "none",
                "--speed",
                "max",
                "--bath",
                "20",
                "--data",
                home.toString());
        assertTrue(said.err().contains("--bath was 20 °C."), said.err());
        assertEquals(0, said.exit(), said.err());
    }

    private static List<String> said(Double bath, Double amount, Double seed) {
        return new SetupRemarks(RECIPE).of(maybe(bath), maybe(amount), maybe(seed));
    }

    private static OptionalDouble maybe(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
