package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Kind;
import fifthform.simulator.bench.CauseTrial.Fault;
import fifthform.simulator.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What went wrong first, in the practice scenarios and in drawn batches; {@code CauseBench} is the same at length. */
class CauseTrialTest {
    private static CauseTrial trial(String id) {
        Scenario scenario = BatchRunTest.scenario(id);
        return CauseTrial.of(scenario, scenario.seed());
    }

    @ParameterizedTest
    @CsvSource({
        "broken-wire, PROBE_FAULTY",
        "cold-kitchen, COOLED_TOO_DEEP",
        "double-lift, LIFTED_LATE",
        "gone-quiet, READINGS_MISSING",
        "hasty-hands, HELD_TOO_SHORT",
        "heat-gun, OVERSHOT",
        "kept-boiling, MELTED_TOO_HOT",
        "lifted-late, BATH_TOO_HOT",
        "loose-contact, READINGS_MISSING",
        "over-cooled, COOLED_TOO_DEEP",
        "own-way, BATH_TOO_HOT",
        "probe-out, PROBE_OUT",
        "probe-slipped, READINGS_DOUBTFUL",
        "scalding-bath, BATH_TOO_HOT",
        "too-little-cooling, HELD_TOO_SHORT",
        "unplugged, READINGS_MISSING"
    })
    void theKnownFaultComesFirst(String id, Kind kind) {
        Optional<Cause> first = trial(id).causes().first();
        assertEquals(Optional.of(kind), first.map(Cause::kind), () -> first.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "big-glass",
                "first-light",
                "first-time",
                "full-disk",
                "gas-thick-pot",
                "glass-bowl",
                "held-with-dryer",
                "hot-kitchen",
                "luck",
                "milk",
                "once-more",
                "small-steel",
                "two-ingredient",
                "warm-and-long",
                "white"
            })
    void whereNothingWentWrongNothingIsClaimed(String id) {
        assertEquals(List.of(), trial(id).faults());
    }

    /** What comes while it melts costs no temper: it is told, and is no fault. */
    @ParameterizedTest
    @CsvSource({"pinched-lead, PROBE_FAULTY", "dead-board, READINGS_DOUBTFUL", "noisy-bus, READINGS_MISSING"})
    void troubleInTheMeltIsARemark(String id, Kind kind) {
        CauseTrial trial = trial(id);
        assertEquals(List.of(), trial.faults());
        assertTrue(
                trial.causes().all().stream().anyMatch(c -> c.kind() == kind),
                trial.causes().all()::toString);
    }

    @Test
    void aLateLiftIsToldWithItsSecondsAndWhatTheScreenSaid() {
        Cause late = trial("lifted-late").causes().faults().stream()
                .filter(c -> c.kind() == Kind.LIFTED_LATE)
                .findFirst()
                .orElseThrow();
        assertEquals(18, late.off().orElseThrow().toSeconds(), 4);
        assertEquals("lift-now", ((Cause.Said.Told) late.said()).word());
    }

    @Test
    void soundHomeBatchesAreLeftAlone() {
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(53);
        List<CauseTrial> sound = LongStream.range(0, 40)
                .mapToObj(n -> CauseTrial.followed(fleet, n))
                .filter(CauseTrial::isSound)
                .toList();
        assertTrue(sound.size() >= 2, sound.size() + " sound batches");
        long silent = sound.stream().filter(t -> t.faults().isEmpty()).count();
        assertTrue(silent >= 0.95 * sound.size(), silent + " of " + sound.size());
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void aFaultThatIsPutInIsNamedFirst(Fault fault) {
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(53);
        List<CauseTrial> shown = LongStream.range(0, 4)
                .mapToObj(n -> CauseTrial.of(fleet, n, fault))
                .filter(t -> fault.shows(t) && (fault == Fault.MILD_MELT || t.isMelted()))
                .toList();
        long right = shown.stream()
                .filter(t -> t.causes()
                        .first()
                        .filter(c -> fault.right().contains(c.kind()))
                        .isPresent())
                .count();
        assertTrue(!shown.isEmpty(), "no batch shows it");
        assertTrue(right >= 0.6 * shown.size(), right + " of " + shown.size());
    }
}
