package pippinry;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.CanBeAnnotated.Predicates.annotatedWith;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.properties.CanBeAnnotated;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What may know what, read from the jars as shipped; each rule says why. */
class ArchitectureIT {

    private static final DescribedPredicate<JavaClass> OURS = resideInAPackage("pippinry..");
    private static final DescribedPredicate<CanBeAnnotated> COMPONENT =
            annotatedWith("org.osgi.service.component.annotations.Component");

    /** The part of Java 2D that draws on anything. */
    private static final DescribedPredicate<HasName> DRAWING = nameMatching(
            "java[.]awt[.](Graphics.*|Font.*|Color|.*Paint|Paint.*|Shape|Rectangle|Polygon|Point|.*Stroke|RenderingHints.*"
                    + "|.*Composite|Image|Transparency)");

    private static ShippedClasses program;

    @BeforeAll
    static void readJars() throws IOException {
        program = ShippedClasses.read();
    }

    @Test
    void bundlesFormNoRing() {
        slices().assignedFrom(new ByBundle())
                .should()
                .beFreeOfCycles()
                .because("a ring cannot be taken apart, neither by a reader nor by leaving a bundle out")
                .check(program.classes());
    }

    @Test
    void noBundleReachesIntoAnothersInside() {
        classes()
                .that(OURS)
                .should(keepOutOfOtherBundlesInside())
                .because("what is not in a root package may change any day")
                .check(program.classes());
    }

    @Test
    void theModelKnowsNeitherSwingNorServicesNorTheStore() {
        noClasses()
                .that(resideInAPackage("pippinry.model.."))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "javax.swing..",
                        "java.awt..",
                        "org.osgi.framework..",
                        "org.osgi.service..",
                        "org.eclipse..",
                        "com.fasterxml..",
                        "picocli.."))
                .because("records outlive the technique that keeps and shows them")
                .check(program.classes());
    }

    @Test
    void statisticsKnowsNothingOfFruit() {
        noClasses()
                .that(resideInAPackage("pippinry.statistics.."))
                .should()
                .dependOnClassesThat(OURS.and(not(resideInAPackage("pippinry.statistics.."))))
                .because("numerics must be open to checking by people who never saw an apple tree")
                .check(program.classes());
    }

    @Test
    void onlyTheStoreSeesTheStorageEngine() {
        noClasses()
                .that(OURS.and(not(resideInAPackage("pippinry.store.internal.."))))
                .should()
                .dependOnClassesThat(resideInAnyPackage("org.eclipse.store..", "org.eclipse.serializer.."))
                .because("the engine can then be exchanged without touching a module")
                .check(program.classes());
    }

    @Test
    void whatNeedsAScreenStaysInViews() {
        noClasses()
                .that(OURS.and(
                        not(resideInAnyPackage("..internal.view..", "pippinry.panels..", "pippinry.workbench.."))))
                .should()
                .dependOnClassesThat(resideInAnyPackage("javax.swing..", "java.awt..")
                        .and(not(resideInAnyPackage("java.awt.geom..", "java.awt.image..", "java.awt.font..")))
                        .and(not(DRAWING)))
                .because("what is computed is tested and used without a screen; only drawing, on paper too, is free")
                .check(program.classes());
    }

    @Test
    void componentsStayInternal() {
        classes()
                .that(COMPONENT)
                .should()
                .resideInAPackage("..internal..")
                .because("others get the service, never the class behind it")
                .check(program.classes());
    }

    @Test
    void modulesDoNotCallEachOther() {
        slices().matching(
                        "pippinry.(pedigree|lineage|story|crossing|nursery|labels|season|ground|screening|phenology|evaluation)..")
                .should()
                .notDependOnEachOther()
                .because("what one asks of another is an interface in pippinry.model.ask, so that any may be left out")
                .check(program.classes());
    }

    private static ArchCondition<JavaClass> keepOutOfOtherBundlesInside() {
        return new ArchCondition<>("use only the contracts of other bundles") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getDirectDependenciesFromSelf().stream()
                        .filter(ArchitectureIT::reachesInside)
                        .forEach(reach -> events.add(SimpleConditionEvent.violated(type, reach.getDescription())));
            }
        };
    }

    private static boolean reachesInside(Dependency dependency) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        return resideInAPackage("pippinry..internal..").test(target)
                && !program.bundleOf(target).equals(program.bundleOf(dependency.getOriginClass()));
    }

    /** One slice for each bundle. */
    private static final class ByBundle implements SliceAssignment {

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return program.bundleOf(type).map(SliceIdentifier::of).orElseGet(SliceIdentifier::ignore);
        }

        @Override
        public String getDescription() {
            return "bundles";
        }
    }
}
