package fifthform.curves.plan;

import static fifthform.curves.plan.Table.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The computed rows of the seeding table, to half of their last digit: a heat balance with the latent heats of Beckett ed.
 * 2009, pp. 667–668, done by somebody else's program.
 */
class SeedingTableTest {
    private static final Pattern SHARE = Pattern.compile("computed: seed share ([\\d.]+) of total at 20 C");
    private static final Pattern ENDS = Pattern.compile("mix ends at ([\\d.]+) C.*");
    private static final Pattern MELTS = Pattern.compile("melt at ([\\d.]+) C, mix at ([\\d.]+) C, seed at 20 C.*");

    static List<Map<String, String>> computed() {
        return Table.rows("seeding.csv").stream()
                .filter(row -> row.get("seed_form").startsWith("computed"))
                .toList();
    }

    @Test
    void theTableHasAllItsComputedRows() {
        assertEquals(21, computed().size());
    }

    @ParameterizedTest
    @MethodSource("computed")
    void everyRowIsReached(Map<String, String> row) {
        SeedHeat seed = new SeedHeat(Heat.latent(row.get("type").equals("dark") ? 0 : 0.05), 0, 20);
        Matcher share = SHARE.matcher(row.get("seed_form"));
        if (share.matches()) {
            double s = Double.parseDouble(share.group(1));
            double to = group(ENDS, row.get("condition"), 1);
            assertEquals(number(row, "value"), seed.meltCelsius(s, 0, to), 0.005 + 1e-9);
            assertEquals(0, seed.stillSolidShare(s, seed.meltCelsius(s, 0, to), to), 1e-12);
        } else {
            double melt = group(MELTS, row.get("condition"), 1);
            double to = group(MELTS, row.get("condition"), 2);
            assertEquals(number(row, "value"), seed.share(melt, 0, to), 0.00005 + 1e-9);
        }
    }

    /** The bowl gives heat too, so more seed is needed; and what is asked to stay solid does stay. */
    @Test
    void theBowlCountsAndWhatIsAskedForStaysSolid() {
        SeedHeat bare = new SeedHeat(46_000, 0, 20);
        SeedHeat inGlass = new SeedHeat(46_000, 600, 20);
        double share = inGlass.share(34, 0.03, 32);
        assertEquals(0.03, inGlass.stillSolidShare(share, 34, 32), 1e-12);
        assertEquals(34, inGlass.meltCelsius(share, 0.03, 32), 1e-9);
        assertEquals(46, inGlass.meltCelsius(inGlass.share(46, 0.03, 32), 0.03, 32), 1e-9);
        assertEquals(true, share > bare.share(34, 0.03, 32));
    }

    private static double group(Pattern pattern, String text, int group) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.matches()) throw new AssertionError(text);
        return Double.parseDouble(matcher.group(group));
    }
}
