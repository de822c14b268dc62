package fifthform.monitor.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;

/** Who in the monitor may see whom. */
@AnalyzeClasses(packages = "fifthform", importOptions = DoNotIncludeTests.class)
class BoundariesTest {
    private static final String TRAINING = "fifthform.simulator.training.TrainCommand";

    @ArchTest
    static final ArchRule onlyPracticeIsSimulated = noClasses()
            .that()
            .resideInAPackage("fifthform.monitor..")
            .and()
            .resideOutsideOfPackages("fifthform.monitor.app..", "fifthform.monitor.practice..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("fifthform.simulator..")
            .because("simulated and real never mix: two rooms know of simulation, the rest sees inputs");

    @ArchTest
    static final ArchRule theMonitorIsOnTop = noClasses()
            .that()
            .resideOutsideOfPackage("fifthform.monitor..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("fifthform.monitor..")
            .because("the arrows go one way");

    @ArchTest
    static final ArchRule onlyViewsSeeTheWindow = noClasses()
            .that()
            .resideInAPackage("fifthform..")
            .and()
            .resideOutsideOfPackages("fifthform.monitor.view..", "fifthform.monitor.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "eu.hansolo..")
            .because("what a screen says is tested without one, and the program starts where there is none");

    @ArchTest
    static final ArchRule wordsKnowNoScreen = noClasses()
            .that()
            .resideInAPackage("fifthform.monitor.model..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "fifthform.monitor.view..",
                    "fifthform.monitor.chart..",
                    "fifthform.monitor.terminal..",
                    "fifthform.monitor.store..",
                    "java.io..",
                    "java.nio..")
            .because("a view model is a function from snapshot to words");

    @ArchTest
    static final ArchRule wordsAskNobodyTheTime = noClasses()
            .that()
            .resideInAnyPackage(
                    "fifthform.monitor.model..", "fifthform.monitor.session..", "fifthform.monitor.analyse..")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .because("a recording must replay to the same words");

    @ArchTest
    static final ArchRule theJournalKnowsNoScreen = noClasses()
            .that()
            .resideInAnyPackage(
                    "fifthform.monitor.store..", "fifthform.monitor.session..", "fifthform.monitor.intake..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "javafx..",
                    "fifthform.monitor.view..",
                    "fifthform.monitor.chart..",
                    "fifthform.monitor.terminal..",
                    "fifthform.monitor.model..")
            .because("what happened is recorded whether or not anybody looks");

    /** Training is a program of its own, for those who build: it has its own exit code, and no session. */
    @ArchTest
    static final ArchRule onlyTheTopEndsTheProgram = noClasses()
            .that()
            .resideOutsideOfPackage("fifthform.monitor.app..")
            .and()
            .doNotHaveFullyQualifiedName(TRAINING)
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class)
            .because("a session is closed before the program ends");

    @ArchTest
    static final ArchRule nobodyStartsTheOtherProgram = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(TRAINING)
            .should()
            .callMethod(TRAINING, "main", "[Ljava.lang.String;")
            .because("its main ends the program that it runs in");

    @ArchTest
    static final ArchRule nobodyLeansOnTheTop = noClasses()
            .that()
            .resideOutsideOfPackage("fifthform.monitor.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("fifthform.monitor.app..")
            .because("the room that puts things together is used by none of them");

    @ArchTest
    static final ArchRule onlyTheTopReadsCommands = noClasses()
            .that()
            .resideOutsideOfPackage("fifthform.monitor.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..")
            .because("the command line is one way in, not a habit");
}
