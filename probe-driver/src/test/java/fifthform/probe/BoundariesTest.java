package fifthform.probe;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;

/** Who may see whom in this module. */
@AnalyzeClasses(packages = "fifthform", importOptions = ImportOption.DoNotIncludeTests.class)
class BoundariesTest {
    @ArchTest
    static final ArchRule theSerialLibraryStaysAtTheEdge = noClasses()
            .that()
            .resideOutsideOfPackages("fifthform.probe.link..", "fifthform.probe.find..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fazecast..")
            .because("everything else must run on recorded and simulated bytes alike");

    @ArchTest
    static final ArchRule importsGoUpwards = noClasses()
            .that()
            .resideInAPackage("fifthform.probe..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("fifthform.simulator..", "fifthform.monitor..", "javafx..")
            .because("the driver serves simulator and monitor and must not know them");

    @ArchTest
    static final ArchRule protocolsKnowBytesOnly = noClasses()
            .that()
            .resideInAPackage("fifthform.probe.protocol..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("fifthform.probe.link..", "fifthform.probe.reader..", "fifthform.probe.find..")
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..", "java.util.concurrent..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.io.File.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.io.OutputStream.class)
            .because("the same bytes must mean the same, live and in a replay");

    @ArchTest
    static final ArchRule protocolsHaveNoClockAndNoThread = noClasses()
            .that()
            .resideInAPackage("fifthform.probe.protocol..")
            .should()
            .dependOnClassesThat()
            .areAssignableTo(InstantSource.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class)
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .because("where chunks end carries no meaning, and whoever must ask is handed the link's time");
}
