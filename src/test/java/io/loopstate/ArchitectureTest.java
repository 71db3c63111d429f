package io.loopstate;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import java.time.Clock;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The layers of the project, as lists of what is allowed: what is not listed is forbidden. */
@AnalyzeClasses(packages = ArchitectureTest.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    static final String ROOT = "io.loopstate";

    /** For each package the packages of this project that it may use beside itself. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            entry("engine.error", List.of()),
            entry("engine.numerics", List.of("engine.error")),
            entry("engine.eos", List.of("engine.error", "engine.numerics")),
            entry("engine.coexistence", List.of("engine.error", "engine.numerics", "engine.eos")),
            entry("engine.fluid", List.of("engine.error", "engine.numerics", "engine.eos")),
            entry("engine.property", List.of("engine.error", "engine.numerics", "engine.eos", "engine.fluid")),
            entry(
                    "engine.flash",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.coexistence",
                            "engine.fluid",
                            "engine.property")),
            entry(
                    "engine.transport",
                    List.of("engine.error", "engine.numerics", "engine.eos", "engine.fluid", "engine.property")),
            entry(
                    "engine.component",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash",
                            "engine.transport")),
            entry("engine.air", List.of("engine.error", "engine.numerics")),
            entry(
                    "engine.cycle",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash",
                            "engine.transport",
                            "engine.component")),
            entry(
                    "engine.diagram",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash")),
            entry(
                    "engine.compression",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash",
                            "engine.transport",
                            "engine.component",
                            "engine.cycle")),
            entry(
                    "engine.rejection",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash",
                            "engine.transport",
                            "engine.component",
                            "engine.cycle",
                            "engine.air")),
            entry(
                    "engine.balance",
                    List.of(
                            "engine.error",
                            "engine.numerics",
                            "engine.eos",
                            "engine.fluid",
                            "engine.property",
                            "engine.flash",
                            "engine.transport",
                            "engine.component",
                            "engine.cycle",
                            "engine.air",
                            "engine.compression",
                            "engine.rejection")),
            entry("units", List.of()),
            entry("web.dto", List.of()),
            entry("web.problem", List.of("web.dto", "engine.error")),
            entry("web.template", List.of()),
            entry("web.chart", List.of("web.template")),
            entry("web.form", List.of("web.dto", "web.problem", "web.template")),
            entry("web.page", List.of("web.dto", "web.problem", "web.form", "web.template", "web.mapping")),
            entry("web.mapping", List.of("web.dto", "web.problem", "web.chart", "web.form", "units", "engine")),
            entry("web.batch", List.of("web.dto", "web.problem", "web.mapping", "web.form")),
            entry("web.verify", List.of("web.dto", "web.problem", "web.mapping", "units", "engine.error")),
            entry("web.verification", List.of("web.dto", "web.problem", "web.verify", "web.template", "units")),
            entry(
                    "web.rest",
                    List.of(
                            "web.dto",
                            "web.mapping",
                            "web.chart",
                            "web.batch",
                            "web.form",
                            "web.verify",
                            "web.verification",
                            "web.page",
                            "web.problem",
                            "engine.cycle",
                            "engine.property",
                            "engine.error")),
            entry(
                    "wiring",
                    List.of(
                            "engine",
                            "units",
                            "web.dto",
                            "web.problem",
                            "web.mapping",
                            "web.chart",
                            "web.batch",
                            "web.form",
                            "web.page",
                            "web.verify",
                            "web.verification")));

    /** Packages that have a place but no classes yet. */
    private static final Set<String> WITHOUT_CLASSES = Set.of();

    @ArchTest
    static void everyPackageHasAPlaceInTheTable(JavaClasses all) {
        Set<String> packages = all.stream()
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .map(type -> type.getPackageName().replace(ROOT + ".", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(packages)
                .allSatisfy(name -> assertThat(MAY_USE.keySet())
                        .as("the package that %s belongs to", name)
                        .anyMatch(key -> name.equals(key) || name.startsWith(key + ".")));
    }

    @ArchTest
    static final ArchRule packagesUseOnlyWhatTheTableAllows = CompositeArchRule.of(
            MAY_USE.keySet().stream().map(ArchitectureTest::onlyTheAllowed).toList());

    /** The one class that solves linear equations, with a library. */
    private static final String FIT = ROOT + ".engine.compression.RatingFit";

    @ArchTest
    static final ArchRule fitUsesLinearAlgebraOnly = classes()
            .that()
            .haveFullyQualifiedName(FIT)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", in("engine"), "org.hipparchus.linear..")
            .because("the engine is to run without any framework");

    @ArchTest
    static final ArchRule engineIsPlainJava = classes()
            .that()
            .resideInAPackage(in("engine"))
            .and()
            .resideOutsideOfPackage(in("engine.fluid"))
            .and()
            .doNotHaveFullyQualifiedName(FIT)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", in("engine"))
            .because("the engine is to run without any framework");

    @ArchTest
    static final ArchRule fluidsAreReadByAStreamingParser = classes()
            .that()
            .resideInAPackage(in("engine.fluid"))
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", in("engine"), "com.fasterxml.jackson.core..")
            .because("the engine is to run without any framework");

    @ArchTest
    static final ArchRule unitsUseNothingElse = classes()
            .that()
            .resideInAPackage(in("units"))
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", in("units"), "javax.measure..", "tech.units..", "systems.uom..")
            .because("units are a calculation, not a service");

    @ArchTest
    static final ArchRule unitsStayAtTheEdge = classes()
            .that()
            .resideInAPackage(in("units"))
            .should()
            .onlyHaveDependentClassesThat()
            .resideInAnyPackage(in("units"), in("web.mapping"), in("web.verify"), in("web.verification"), in("wiring"))
            .because("the engine and the resources know SI only");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching(ROOT + ".(**)").should().beFreeOfCycles();

    /** Work areas that live within one call, are never shared, and say so in their documentation. */
    private static final Set<String> WORK_AREAS = Set.of(
            "io.loopstate.engine.eos.Isotherm",
            "io.loopstate.engine.numerics.Deadline",
            "io.loopstate.engine.balance.BracketSearch",
            "io.loopstate.engine.balance.LevelSearch",
            "io.loopstate.engine.eos.MixturePhase",
            "io.loopstate.engine.eos.MixturePhase$Sums",
            "io.loopstate.engine.rejection.GasCoolerCoil$Integral");

    @ArchTest
    static final ArchRule engineIsImmutable = fields().that()
            .areDeclaredInClassesThat(resideInAnyPackage(in("engine"))
                    .and(not(describe("are work areas", type -> WORK_AREAS.contains(type.getName())))))
            .should()
            .beFinal()
            .because("the engine is shared between threads");

    @ArchTest
    static final ArchRule recordsDoNotExposeArrays = fields().that()
            .areDeclaredInClassesThat(resideInAnyPackage(in("engine"))
                    .and(describe("are public records", ArchitectureTest::publicRecord)))
            .should()
            .notHaveRawType(describe("an array", JavaClass::isArray))
            .because("final does not protect the elements of an array");

    @ArchTest
    static final ArchRule wireTypesAreRecordsOrEnumerations = classes()
            .that()
            .resideInAPackage(in("web.dto"))
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .beRecords()
            .orShould()
            .beEnums()
            .orShould()
            .beAssignableTo(java.lang.annotation.Annotation.class);

    @ArchTest
    static final ArchRule wireTypesUseAnnotationsOnly = classes()
            .that()
            .resideInAPackage(in("web.dto"))
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    in("web.dto"),
                    "com.fasterxml.jackson.annotation..",
                    "jakarta.validation..",
                    "org.eclipse.microprofile.openapi.annotations..");

    @ArchTest
    static final ArchRule nobodyUsesResources = noClasses()
            .that()
            .resideOutsideOfPackage(in("web.rest"))
            .should()
            .dependOnClassesThat()
            .resideInAPackage(in("web.rest"));

    @ArchTest
    static final ArchRule nobodyUsesWiring = noClasses()
            .that()
            .resideOutsideOfPackage(in("wiring"))
            .should()
            .dependOnClassesThat()
            .resideInAPackage(in("wiring"));

    /** So that setting the clock changes no reply, limit or time-out; the start tells how long it took. */
    @ArchTest
    static final ArchRule nobodyAsksForTheTimeOfDay = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(ROOT + ".wiring.Startup")
            .should()
            .callMethodWhere(describe(
                    "asks for the time of day",
                    call -> call.getTarget().getName().equals("currentTimeMillis")
                            || call.getTarget().getName().equals("now")
                                    && call.getTargetOwner().getPackageName().startsWith("java.time")
                            || call.getTargetOwner().isEquivalentTo(Clock.class)))
            .orShould()
            .callConstructor(Date.class);

    private static ArchRule onlyTheAllowed(String name) {
        List<String> allowed = MAY_USE.get(name);
        return noClasses()
                .that()
                .resideInAPackage(in(name))
                .should()
                .dependOnClassesThat(resideInAnyPackage(in("")).and(not(resideInAnyPackage(withOwn(name, allowed)))))
                .because("the table allows %s only %s".formatted(name, allowed))
                .allowEmptyShould(WITHOUT_CLASSES.contains(name));
    }

    private static boolean publicRecord(JavaClass type) {
        return type.isRecord() && type.getModifiers().contains(JavaModifier.PUBLIC);
    }

    private static String in(String name) {
        return name.isEmpty() ? ROOT + ".." : ROOT + '.' + name + "..";
    }

    private static String[] withOwn(String own, List<String> others) {
        String[] result =
                Arrays.copyOf(others.stream().map(ArchitectureTest::in).toArray(String[]::new), others.size() + 1);
        result[others.size()] = in(own);
        return result;
    }
}
