package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Tracks;
import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Doubt;
import fifthform.probe.Talk;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every trouble of every pretend adapter is told as what it is, and none becomes a reading that is believed. */
class EveryTroubleTest {
    private static final long BEGINS = 150;
    /** Long enough for a number that has stopped to be noticed by its scatter alone, which takes four minutes. */
    private static final long STUCK_SECONDS = 280;

    private static final long OTHERS_SECONDS = 60;
    private static final long AFTERWARDS_SECONDS = 60;
    /** So much, that even a coarse converter's numbers scatter. */
    private static final double NOISE_KELVIN = 0.2;

    static Stream<Arguments> troubles() {
        return Tongues.all()
                .flatMap(talk -> Tongues.language(talk).troubles().stream().map(t -> Arguments.of(talk, t)));
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void isToldAndNoFalseReadingIsBelieved(Talk talk, Trouble trouble) throws Exception {
        long lasting = trouble == Trouble.STUCK ? STUCK_SECONDS : OTHERS_SECONDS;
        long ends = BEGINS + lasting;
        SpokenBatch batch = SpokenBatch.heard(
                Duration.ofSeconds(ends + AFTERWARDS_SECONDS),
                talk,
                "noise = " + NOISE_KELVIN + " K",
                "fault = " + trouble.word() + " for " + lasting + " s, " + BEGINS + " s after start");
        List<Cause> causes = batch.causes(BEGINS, ends);
        Heard heard = new Heard(batch);
        batch.inputs().forEach(heard::take);
        String story = talk + " " + trouble + ": causes " + causes + ", doubts " + heard.doubts + ", false "
                + heard.falseOnes + ", believed " + heard.believedFalse;
        boolean told = causes.stream().anyMatch(expected(talk, trouble)::contains)
                || heard.doubts.stream().anyMatch(doubts(trouble)::contains);
        assertTrue(told || trouble == Trouble.DROP_OUTS, story);
        assertTrue(heard.believedFalse <= believable(talk, trouble), story);
        assertTrue(batch.samples(ends + 10, ends + AFTERWARDS_SECONDS).count() > 60, "it comes back: " + story);
        long during = batch.samples(BEGINS + 2, ends).count();
        assertTrue(trouble != Trouble.DROP_OUTS || during > 4 && during < 50, during + " readings; " + story);
    }

    private static Set<Cause> expected(Talk talk, Trouble trouble) {
        return switch (trouble) {
            case UNPLUGGED -> EnumSet.of(Cause.UNPLUGGED);
            case OPEN_CIRCUIT -> openCircuit(talk);
            case SILENT -> EnumSet.of(Cause.SILENT);
            case SHORT_CIRCUIT -> EnumSet.of(Cause.SHORT_CIRCUIT);
            case FLOOD -> EnumSet.of(Cause.FLOODED);
            case GARBAGE, HALF_LINES, WRONG_CRC -> EnumSet.of(Cause.GARBLED);
            // Zeros are 0 K where the device counts in kelvins.
            case DEAD_LINE -> EnumSet.of(Cause.GARBLED, Cause.OUT_OF_RANGE);
            // In a binary stream a number that leaps is taken for a frame that began elsewhere.
            case SPIKES -> isBinary(talk) ? EnumSet.of(Cause.GARBLED) : EnumSet.noneOf(Cause.class);
            case STUCK, DROP_OUTS -> EnumSet.noneOf(Cause.class);
        };
    }

    private static boolean isBinary(Talk talk) {
        return talk.settings().containsValue("binary");
    }

    /** The MCP9600 has no bit for it: its number runs to the end of the range, which in a binary stream is no frame. */
    private static Set<Cause> openCircuit(Talk talk) {
        if (!talk.protocol().equals("mcp9600")) return EnumSet.of(Cause.OPEN_CIRCUIT);
        return EnumSet.of(talk.settings().isEmpty() ? Cause.OUT_OF_RANGE : Cause.GARBLED);
    }

    private static Set<Doubt> doubts(Trouble trouble) {
        return switch (trouble) {
            case DEAD_LINE -> EnumSet.of(Doubt.DEAD_LINE);
            case STUCK -> EnumSet.of(Doubt.STUCK);
            case SPIKES -> EnumSet.of(Doubt.JUMPS, Doubt.TOO_FAST, Doubt.NOISY);
            default -> EnumSet.noneOf(Doubt.class);
        };
    }

    /**
     * How many false readings may be believed: nobody can know at once that a number has stopped, or that one is off. The
     * decoder of binary frames believes a frame when others have followed it, so after a pause it tells some late.
     */
    private static int believable(Talk talk, Trouble trouble) {
        return switch (trouble) {
            case STUCK -> (int) (4 * STUCK_SECONDS);
            case SPIKES -> 40;
            case DEAD_LINE -> 4;
            case SILENT, DROP_OUTS, HALF_LINES -> isBinary(talk) ? 12 : 0;
            case UNPLUGGED, OPEN_CIRCUIT, SHORT_CIRCUIT, GARBAGE, FLOOD, WRONG_CRC -> 0;
        };
    }

    /** The engine behind the adapter. */
    private static final class Heard {
        private final Setup setup;
        private final SpokenBatch batch;
        private final Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        private State state;
        private int falseOnes;
        private int believedFalse;

        Heard(SpokenBatch batch) throws IOException {
            this.batch = batch;
            this.setup = new Setup(
                    dark(),
                    SpokenBatch.scenario(batch.language().talk()).bowl(),
                    List.of(new ProbeSetup(
                            SpokenBatch.BOWL,
                            Role.BOWL,
                            batch.language().talk().toString(),
                            "test",
                            Correction.UNCHECKED,
                            4,
                            batch.language().protocol().sensor())),
                    Setup.USUAL_REACTION,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Origin.SIMULATED,
                    Approach.TOUCHES_WHERE_UNSURE,
                    OptionalDouble.empty(),
                    Beginning.WHOLE,
                    Optional.empty());
            this.state = Engine.start(setup, SpokenBatch.START);
        }

        void take(Input input) {
            state = Engine.step(setup, state, input).after();
            if (!(input instanceof Sample sample)) return;
            boolean isFalse = batch.offKelvin(sample)
                    > Tongues.halfStepKelvin(batch.language().talk()) + 6 * NOISE_KELVIN;
            if (isFalse) falseOnes++;
            for (Tracks.Entry entry : state.tracks().entries()) {
                entry.track().doubt().ifPresent(doubts::add);
                if (isFalse && entry.track().doubt().isEmpty()) believedFalse++;
            }
        }

        private static Recipe dark() throws IOException {
            try (InputStream in = Heard.class.getResourceAsStream("/recipes/dark.recipe")) {
                return Tongues.accepted(
                        RecipeText.parse("dark", new String(in.readAllBytes(), StandardCharsets.UTF_8)));
            }
        }
    }

    @Test
    void everyTroubleBelongsToSomeAdapter() {
        Set<Trouble> some = EnumSet.noneOf(Trouble.class);
        Tongues.all().forEach(talk -> some.addAll(Tongues.language(talk).troubles()));
        assertEquals(EnumSet.allOf(Trouble.class), some);
    }
}
