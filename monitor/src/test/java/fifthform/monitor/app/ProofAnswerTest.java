package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Fat;
import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.proof.Unfit;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import fifthform.monitor.settings.Units;
import fifthform.simulator.tube.FatMake;
import fifthform.simulator.tube.TubeAdapter;
import fifthform.simulator.tube.TubeCup;
import fifthform.simulator.tube.TubeSample;
import fifthform.simulator.tube.TubeTrial;
import fifthform.simulator.tube.TubeTrouble;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a real cup learns from one cooling after the other, without waiting for any. */
class ProofAnswerTest {
    private static final Instant AT = Instant.parse("2026-02-01T10:00:00Z");
    private static final TubeCup CUP = new TubeCup(3.7, 12, 0.35, 0.4, 0.45, 0.1, 0.04, 4, 0.1);

    @TempDir
    Path folder;

    private final StringWriter said = new StringWriter();
    private final ProofJudge judge = new ProofJudge(CheckDesk.lines(new PrintWriter(said, true), Units.CELSIUS));

    @Test
    void twoRunsCalibrateAndThreeGoodSamplesTakeTheModelsPlace() throws Exception {
        KeptCup cup = KeptCup.named("dark", "foil");
        for (String run : List.of("run-1", "run-2")) {
            ProofAnswer answer = judge.calibrated(
                    readings(0, 34, 1), Circumstances.ofMelted().withBath(0), place(cup));
            cup = answer.keep(cup, run, Optional.empty(), AT);
            judge.tellTwoRuns(cup);
        }
        assertTrue(said.toString().contains("Do it once more"), said.toString());
        assertTrue(said.toString().contains("the cup is calibrated"), said.toString());
        assertTrue(cup.traits().isPresent());

        for (int i = 1; i <= 3; i++) {
            ProofAnswer answer = sample(0.016 + 0.002 * i, i, cup);
            assertTrue(answer.verdict().orElseThrow().provisional());
            cup = answer.keep(cup, "proof-" + i, Optional.of("demo-session"), AT)
                    .marked("proof-" + i, KeptCurve.Mark.GOOD);
        }
        assertEquals(Optional.of("demo-session"), cup.curves().get(0).session());

        ProofAnswer own = sample(0.019, 7, cup);
        assertEquals(TemperClass.IN_TEMPER, own.verdict().orElseThrow().temper());
        assertTrue(!own.verdict().get().provisional());
        assertEquals(Exit.DONE, own.exit());
        assertTrue(said.toString().contains("Your 3 good curves bend at"), said.toString());
        ProofAnswer under = sample(0.0022, 8, cup);
        assertEquals(TemperClass.UNDER, under.verdict().orElseThrow().temper());
        assertEquals(Exit.ANSWER_IS_NO, under.exit());
    }

    /** What is not judged is recorded in its file, but teaches the cup nothing. */
    @Test
    void anUnfitCurveLeavesTheCupAsItWas() throws Exception {
        KeptCup cup = KeptCup.named("dark", "foil");
        ProofAnswer answer =
                judge.judged(readings(0.02, 31.4, 1), circumstances().withIceLeft(false), place(cup));
        assertEquals(List.of(Unfit.ICE_GONE), answer.unfit());
        assertSame(cup, answer.keep(cup, "proof", Optional.empty(), AT));
        assertTrue(said.toString().contains("The ice was gone"), said.toString());
    }

    private ProofAnswer sample(double seed, long luck, KeptCup cup) throws Exception {
        return judge.judged(readings(seed, 31.4, luck), circumstances(), place(cup));
    }

    private Circumstances circumstances() throws Exception {
        return Circumstances.ofSample(dark()).withBath(0.1).withIceLeft(true);
    }

    private ProofPlace place(KeptCup cup) throws Exception {
        return new ProofPlace(dark(), new Fat(0, 0.38), cup, Optional.empty());
    }

    private Recipe dark() throws Refusal {
        return Chocolates.find("dark", Recipes.load(folder.resolve("recipes"))).recipe();
    }

    private static List<CurvePoint> readings(double seed, double start, long luck) {
        TubeTrial trial = new TubeTrial(
                CUP,
                new TubeSample(FatMake.OF_THE_TABLES, 0.38, seed, 12, start),
                new TubeAdapter(1, 0.03, 0.01, 0),
                0.1,
                TubeTrouble.NONE);
        return trial.run(new SplittableRandom(luck)).readings().stream()
                .map(r -> new CurvePoint(r.seconds(), r.celsius()))
                .toList();
    }
}
