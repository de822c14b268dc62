package fifthform.simulator;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Random;
import java.util.concurrent.ThreadLocalRandom;

/** What the simulator must not know. */
@AnalyzeClasses(packages = "fifthform.simulator", importOptions = DoNotIncludeTests.class)
class BoundariesTest {
    @ArchTest
    static final ArchRule knowsNoMonitor = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("fifthform.monitor..")
            .because("the arrows go one way");

    /** But for the stopwatch of the training, which goes on for hours and may be told to end; no batch knows of it. */
    @ArchTest
    static final ArchRule asksNobodyTheTime = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("fifthform.simulator.training.Stopwatch")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Thread.class, "sleep", long.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .because("a batch goes on in its own time, as fast as somebody reads");

    @ArchTest
    static final ArchRule drawsFromSeedsOnly = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Random.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ThreadLocalRandom.class)
            .orShould()
            .callMethod(Math.class, "random")
            .because("the same seed must give the same batch");

    @ArchTest
    static final ArchRule theSameBitsEverywhere = noClasses()
            .should()
            .callMethod(Math.class, "exp", double.class)
            .orShould()
            .callMethod(Math.class, "log", double.class)
            .orShould()
            .callMethod(Math.class, "pow", double.class, double.class)
            .orShould()
            .callMethod(Math.class, "sin", double.class)
            .orShould()
            .callMethod(Math.class, "cos", double.class)
            .because("only StrictMath gives the same bits on every machine");

    @ArchTest
    static final ArchRule thePhysicsIsItsOwn = noClasses()
            .that()
            .resideInAPackage("fifthform.simulator.bowl..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "fifthform.curves.forecast..",
                    "fifthform.curves.estimate..",
                    "fifthform.curves.signal..",
                    "fifthform.curves.phase..",
                    "fifthform.curves.situation..",
                    "fifthform.curves.cue..",
                    "fifthform.curves.alarm..",
                    "fifthform.curves.engine..",
                    "fifthform.curves.review..")
            .because("a forecast tried on its own physics proves nothing");

    /** Whatever room of the engine is built next: the physics gets its kinetics from {@code curves.crystal}, no more. */
    @ArchTest
    static final ArchRule thePhysicsTakesNothingButChecksAndKinetics = classes()
            .that()
            .resideInAPackage("fifthform.simulator.bowl..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..", "fifthform.simulator.bowl..", "fifthform.curves.check..", "fifthform.curves.crystal..")
            .because("the simulator must be able to be wrong in other ways than the engine");

    /** A proof tried on its own model of a tube proves nothing. */
    @ArchTest
    static final ArchRule theTubeIsItsOwn = classes()
            .that()
            .resideInAPackage("fifthform.simulator.tube..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..", "fifthform.simulator.tube..", "fifthform.simulator.maker..", "fifthform.curves.check..")
            .because("the tube must be able to be wrong in other ways than the proof");
}
