/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.ObjectInputStream;
import java.io.RandomAccessFile;
import java.io.Serializable;
import java.net.Socket;
import java.net.URL;

/**
 * Rules on the compiled classes of all modules. A rule that finds no class to look at fails too: then a package was
 * renamed and the rule with it forgotten.
 */
@AnalyzeClasses(packages = "org.beveragethermal", importOptions = ProductionClasses.class)
class ArchitectureTest {
    private static final String MATERIALS = "org.beveragethermal.materials..";
    private static final String CORE = "org.beveragethermal.core..";
    private static final String SERVICE = "org.beveragethermal.service..";
    private static final String EXAMPLES = "org.beveragethermal.examples..";

    @ArchTest
    static final ArchRule materialsKnowNoOtherModule = noClasses()
            .that()
            .resideInAPackage(MATERIALS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(CORE, SERVICE, EXAMPLES);

    @ArchTest
    static final ArchRule coreKnowsOnlyMaterials = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(SERVICE, EXAMPLES);

    @ArchTest
    static final ArchRule serviceKnowsNoExamples = noClasses()
            .that()
            .resideInAPackage(SERVICE)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(EXAMPLES);

    @ArchTest
    static final ArchRule materialsNeedLittle = noClasses()
            .that()
            .resideInAPackage(MATERIALS)
            .should()
            .dependOnClassesThat(not(resideInAnyPackage(
                    MATERIALS, "java..", "javax.measure..", "tech.units.indriya..", "org.jspecify..")));

    @ArchTest
    static final ArchRule librariesReadNoJson = noClasses()
            .that()
            .resideInAnyPackage(MATERIALS, CORE, SERVICE)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fasterxml..");

    @ArchTest
    static final ArchRule signaturesShowNoOtherLibrary = classes()
            .that()
            .resideInAnyPackage(MATERIALS, CORE, SERVICE)
            .and(describe("are offered to users", Conditions::isOffered))
            .should(Conditions.showUsersOnlyTypesIn(
                    "types of the JDK, javax.measure, the annotations and the project",
                    resideInAnyPackage("java..", "javax.measure..", "org.jspecify..", MATERIALS, CORE, SERVICE)
                            .and(not(resideInAPackage("..internal..")))
                            .or(describe("primitive", type -> type.isPrimitive()))));

    @ArchTest
    static final ArchRule internalsStayInside =
            classes().that().resideInAPackage("org.beveragethermal..").should(Conditions.keepOutOfForeignInternals());

    /** Exceptions and enums are serializable whether one wants it or not. */
    @ArchTest
    static final ArchRule nothingIsSerializable = noClasses()
            .that()
            .areNotAssignableTo(Throwable.class)
            .and()
            .areNotAssignableTo(Enum.class)
            .should()
            .beAssignableTo(Serializable.class);

    /** What a stranger hands in is data: nothing in it names a class, a program, an address or an object to be made. */
    @ArchTest
    static final ArchRule inputIsData = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang.reflect..",
                    "java.lang.invoke..",
                    "java.net.http..",
                    "java.rmi..",
                    "javax.naming..",
                    "javax.script..",
                    "javax.xml..",
                    "com.fasterxml.jackson.databind.jsontype..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(ObjectInputStream.class, ClassLoader.class, ProcessBuilder.class, Socket.class, URL.class)
            .orShould()
            .callMethodWhere(DescribedPredicate.describe(
                    "it starts a program or loads one",
                    call -> call.getTargetOwner().isEquivalentTo(Runtime.class)
                            && call.getName().matches("exec|load|loadLibrary")));

    /** A log is read where its user says; no other file is touched by a library. */
    @ArchTest
    static final ArchRule filesAreThoseThatAreNamed = noClasses()
            .that()
            .resideInAnyPackage(MATERIALS, CORE, SERVICE)
            .and()
            .doNotHaveFullyQualifiedName("org.beveragethermal.core.calibration.log.LogReader")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.nio.file..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(File.class, RandomAccessFile.class, FileInputStream.class, FileOutputStream.class);

    @ArchTest
    static final ArchRule noDefaultLocale =
            noClasses().should().callCodeUnitWhere(SurroundingsDependentApi.defaultLocale());

    @ArchTest
    static final ArchRule noDefaultCharset =
            noClasses().should().callCodeUnitWhere(SurroundingsDependentApi.defaultCharset());

    @ArchTest
    static final ArchRule noDefaultTimeZone =
            noClasses().should().callCodeUnitWhere(SurroundingsDependentApi.defaultTimeZone());

    @ArchTest
    static final ArchRule librariesReadNoClock = noClasses()
            .that()
            .resideInAnyPackage(MATERIALS, CORE, SERVICE)
            .should()
            .callCodeUnitWhere(SurroundingsDependentApi.machineClock());

    /** Synthetic fields are the compiler's or a coverage recorder's. */
    @ArchTest
    static final ArchRule staticFieldsAreFinal = fields().that()
            .areStatic()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule materialsHaveNoCycles =
            slices().matching("org.beveragethermal.materials.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule coreHasNoCycles =
            slices().matching("org.beveragethermal.core.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule serviceHasNoCycles =
            slices().matching("org.beveragethermal.service.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule examplesHaveNoCycles =
            slices().matching("org.beveragethermal.examples.(*)..").should().beFreeOfCycles();
}
