package fifthform.curves;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.targetOwner;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.PrintStream;
import java.time.Clock;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Hashtable;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.WeakHashMap;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/** What makes a recording replay to the same answer, on every machine and every run. */
@AnalyzeClasses(packages = "fifthform.curves", importOptions = ImportOption.DoNotIncludeTests.class)
class BoundariesTest {
    /** Imports go upwards in this list only: a package may use itself and those before it. */
    private static final List<String> ORDER = List.of(
            "check",
            "constants",
            "thermocouple",
            "recipe",
            "setup",
            "input",
            "signal",
            "estimate",
            "network",
            "phase",
            "bowlcheck",
            "forecast",
            "crystal",
            "situation",
            "alarm",
            "cue",
            "engine",
            "review",
            "whatif",
            "probecheck",
            "proof",
            "learning",
            "plan",
            "setting",
            "fault",
            "contrast");

    @ArchTest
    static final ArchRule time_is_handed_in = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .callMethodWhere(target(nameMatching("now")).and(targetOwner(nameStarting("java.time."))))
            .orShould()
            .callMethodWhere(target(nameMatching("nanoTime|currentTimeMillis")))
            .because("a recording must replay to the same answer, whenever that is");

    @ArchTest
    static final ArchRule nothing_is_read_or_written = noClasses()
            .that()
            // Constants with their sources are files; they are packed with the classes and as fixed as they are.
            .doNotHaveFullyQualifiedName("fifthform.curves.constants.PackedTable")
            .and()
            .doNotHaveFullyQualifiedName("fifthform.curves.network.PackedWeights")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..", "java.nio..", "java.net..", "java.util.logging..", "java.util.zip..", "java.sql..")
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(PrintStream.class)
            .orShould()
            .callMethodWhere(target(nameMatching("getProperty|getenv")).and(targetOwner(nameMatching(".*\\.System"))))
            .because("curves is a pure function; the edges are other modules' business");

    @ArchTest
    static final ArchRule nothing_runs_beside_it = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.util.concurrent..")
            .orShould()
            .callMethodWhere(target(nameMatching("parallel|parallelStream")))
            .because("state × input → state needs no thread, and sums in another order differ in the last bit");

    @ArchTest
    static final ArchRule nothing_is_left_to_chance = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Random.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(SplittableRandom.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(RandomGenerator.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethodWhere(target(nameMatching("identityHashCode|randomUUID|shuffle")))
            .because("a recording must replay to the same answer");

    @ArchTest
    static final ArchRule no_screen = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..", "javax.sound..", "eu.hansolo..")
            .because("the screen looks at the state, not the other way round");

    /** {@code Math.exp} and its kin may differ between processors; the four operations and the square root may not. */
    @ArchTest
    static final ArchRule the_same_last_bit_everywhere = noClasses()
            .should()
            .callMethodWhere(
                    targetOwner(nameMatching("java\\.lang\\.Math"))
                            .and(
                                    target(
                                            nameMatching(
                                                    "exp|expm1|log|log10|log1p|pow|cbrt|sin|cos|tan|asin|acos|atan|atan2|sinh|cosh|tanh|hypot"))))
            .because("StrictMath gives the same last bit on every machine");

    @ArchTest
    static final ArchRule one_order_of_iteration = noClasses()
            .should()
            .dependOnClassesThat(belongToAnyOf(
                            HashMap.class, HashSet.class, Hashtable.class, IdentityHashMap.class, WeakHashMap.class)
                    .as("hash tables"))
            .orShould()
            .callMethodWhere(
                    targetOwner(belongToAnyOf(Map.class, Set.class)).and(target(nameMatching("of|copyOf|ofEntries"))))
            .orShould()
            .callMethodWhere(targetOwner(belongToAnyOf(Collectors.class))
                    .and(target(nameMatching("toSet|toMap|groupingBy|toUnmodifiableSet|toUnmodifiableMap"))))
            .because("Set.of, Map.of and hash tables iterate differently from run to run");

    @ArchTest
    static final ArchRule imports_go_upwards = ArchRuleDefinition.classes().should(importUpwardsOnly());

    @ArchTest
    static final ArchRule no_circles =
            slices().matching("fifthform.curves.(*)..").should().beFreeOfCycles();

    private static DescribedPredicate<JavaClass> nameStarting(String prefix) {
        return DescribedPredicate.describe("in " + prefix, c -> c.getName().startsWith(prefix));
    }

    private static ArchCondition<JavaClass> importUpwardsOnly() {
        return new ArchCondition<>("import upwards only in " + ORDER) {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                int place = placeOf(user);
                if (place < 0) events.add(SimpleConditionEvent.violated(user, user + " is in no package of the order"));
                for (Dependency d : user.getDirectDependenciesFromSelf()) {
                    if (placeOf(d.getTargetClass()) > place) {
                        events.add(SimpleConditionEvent.violated(d, d.getDescription()));
                    }
                }
            }
        };
    }

    private static int placeOf(JavaClass type) {
        String prefix = "fifthform.curves.";
        if (!type.getPackageName().startsWith(prefix)) return -1;
        return ORDER.indexOf(type.getPackageName().substring(prefix.length()).split("\\.")[0]);
    }
}
