package rinsebell.demo.rules;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dependencies point one way: demo, app, then web, db and planner side by side, and floor, which knows nobody. */
class OneWayTest {
    /** What stands on the floor and sees all of it; its other packages do not look up to these. */
    private static final String[] ON_TOP = {
        "rinsebell.floor.basin..", "rinsebell.floor.bell..", "rinsebell.floor.command.."
    };

    private static final String[] BELOW = {
        "rinsebell.floor.bowl..",
        "rinsebell.floor.clock..",
        "rinsebell.floor.product..",
        "rinsebell.floor.rule..",
        "rinsebell.floor.salon..",
        "rinsebell.floor.unit..",
        "rinsebell.floor.visit.."
    };

    @Test
    void modulesSeeOnlyWhatIsBelowThem() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("demo")
                .definedBy("rinsebell.demo..")
                .layer("app")
                .definedBy("rinsebell.app..")
                .layer("web")
                .definedBy("rinsebell.web..", "gg.jte.generated..")
                .layer("db")
                .definedBy("rinsebell.db..")
                .layer("planner")
                .definedBy("rinsebell.planner..")
                .layer("floor")
                .definedBy("rinsebell.floor..")
                .whereLayer("demo")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("app")
                .mayOnlyBeAccessedByLayers("demo")
                .whereLayer("web")
                .mayOnlyBeAccessedByLayers("app", "demo")
                .whereLayer("db")
                .mayOnlyBeAccessedByLayers("app", "demo")
                .whereLayer("planner")
                .mayOnlyBeAccessedByLayers("app", "demo")
                .whereLayer("floor")
                .mayOnlyBeAccessedByLayers("planner", "db", "web", "app", "demo")
                .check(House.PROGRAM);
    }

    /** No files, no network, no threads, no chance: what is left of the JDK is values. */
    @Test
    void floorIsMadeOfValues() {
        classes()
                .that()
                .resideInAPackage("rinsebell.floor..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                                "rinsebell.floor..",
                                "org.jspecify.annotations",
                                "java.lang..",
                                "java.math",
                                "java.time..",
                                "java.util",
                                "java.util.function",
                                "java.util.regex",
                                "java.util.stream")
                        .and(DescribedPredicate.not(doesThings())))
                .check(House.PROGRAM);
    }

    private static DescribedPredicate<JavaClass> doesThings() {
        return DescribedPredicate.describe(
                "threads, processes, chance or the console",
                type -> type.isAssignableTo(Thread.class)
                        || type.isEquivalentTo(Runtime.class)
                        || type.isEquivalentTo(System.class)
                        || type.isEquivalentTo(ProcessBuilder.class)
                        || type.isAssignableTo(java.util.random.RandomGenerator.class)
                        || type.isEquivalentTo(java.util.UUID.class));
    }

    @ParameterizedTest
    @ValueSource(strings = {"db", "planner", "web", "app", "demo"})
    void packagesOfAModuleHaveNoCycle(String module) {
        slices().assignedFrom(packagesOf("rinsebell." + module))
                .should()
                .beFreeOfCycles()
                .check(House.PROGRAM);
    }

    private static SliceAssignment packagesOf(String module) {
        return new SliceAssignment() {
            @Override
            public String getDescription() {
                return "packages of " + module;
            }

            @Override
            public SliceIdentifier getIdentifierOf(JavaClass type) {
                var name = type.getPackageName();
                var isInside = name.equals(module) || name.startsWith(module + ".");
                return isInside ? SliceIdentifier.of(name) : SliceIdentifier.ignore();
            }
        };
    }

    /**
     * Floor's sealed families span packages, so those of its nouns see each other by design. What is reckoned from them
     * stays on top.
     */
    @Test
    void whatIsReckonedStandsOnTheNouns() {
        noClasses()
                .that()
                .resideInAnyPackage(BELOW)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ON_TOP)
                .check(House.PROGRAM);
    }

    @Test
    void unitsAndProductsStandAlone() {
        classes()
                .that()
                .resideInAnyPackage("rinsebell.floor.unit..", "rinsebell.floor.product..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "rinsebell.floor.unit..", "rinsebell.floor.product..", "java..", "org.jspecify.annotations"))
                .check(House.PROGRAM);
    }
}
