package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.learning.BarLook.Sureness;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What looks count as, by the rows of the trade table of faults. */
class SignTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    24  | none         |                       |       |        |         |        | clean
                    24  | none         |                       | clean | bright | tapped  | cool   | clean
                    24  | veil         |                       |       |        |         |        | lost-temper
                    24  | streaks      | edges                 | clean | bright |         |        | lost-temper
                    24  | blotches     | thick-part            |       |        |         |        | thick-part-only
                    24  | blotches     | thick-part open-side  |       |        |         |        | lost-temper
                    24  | veil         | over-pieces           |       |        |         |        | other-bloom
                    24  | streaks      | few-bars              |       |        |         |        | few-bars-only
                    24  | sugar        |                       |       |        |         |        | other-bloom
                    24  | oily         |                       |       |        |         |        | other-bloom
                    24  | sugar veil   |                       |       |        |         |        | lost-temper
                    24  | fuzzy veil   |                       |       |        |         |        | fuzzy
                    24  | veil         |                       |       |        |         | warm   | lost-temper
                    168 | veil         |                       |       |        |         | warm   | storage
                    168 | veil         |                       |       |        |         | swings | storage
                    168 | veil         |                       |       |        |         | cool   | lost-temper
                    24  | none         |                       | bends |        |         |        | lost-temper
                    1   | none         |                       | bends |        |         |        | unclear
                    24  | none         |                       | soft  |        |         |        | unclear
                    24  | none         |                       |       | dull   |         |        | unclear
                    24  | none         |                       | soft  | dull   |         |        | lost-temper
                    24  | none         |                       |       | dull   | stuck   |        | lost-temper
                    24  |              |                       | clean | bright |         |        | unclear
                    """)
    void aLookCountsAs(
            double ageHours,
            String bloom,
            String places,
            String snap,
            String gloss,
            String release,
            String kept,
            String sign) {
        BarLook look = new BarLook(
                ageHours,
                words(bloom, Bloom.values()),
                words(places, BarPlace.values()),
                words(snap, Snap.values()).stream().findFirst(),
                words(gloss, Gloss.values()).stream().findFirst(),
                words(release, Release.values()).stream().findFirst(),
                words(kept, Kept.values()).stream().findFirst(),
                Sureness.SURE);
        assertEquals(sign, look.sign().word());
    }

    private static <T extends Enum<T>> List<T> words(String said, T[] choices) {
        if (said == null) return List.of();
        return Stream.of(said.split(" "))
                .map(word -> Stream.of(choices)
                        .filter(c -> c.name().toLowerCase().replace('_', '-').equals(word))
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    /** A look at bars of this age that says bloom or none, and nothing else. */
    static BarLook look(double ageHours, Bloom bloom, Sureness sureness) {
        return new BarLook(
                ageHours,
                List.of(bloom),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                sureness);
    }
}
