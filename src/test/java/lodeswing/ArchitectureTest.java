package lodeswing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The house's lines: who may import whom. None of these is ever switched off. */
@AnalyzeClasses(packages = "lodeswing", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule coreKnowsOnlyTheJdkAndCommonsMath =
      classes()
          .that()
          .resideInAPackage("lodeswing.core..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "lodeswing.core..",
              "java..",
              "jdk.incubator.vector..",
              "org.apache.commons.math3..",
              "org.jspecify.annotations..");

  @ArchTest
  static final ArchRule wordsKnowNothingOfOurs =
      classes()
          .that()
          .resideInAPackage("lodeswing.words..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "lodeswing.words..", "java..", "com.ibm.icu..", "org.jspecify.annotations..");

  @ArchTest
  static final ArchRule lettersKnowNothingOfOurs =
      classes()
          .that()
          .resideInAPackage("lodeswing.letters..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "lodeswing.letters..", "java..", "com.ibm.icu..", "org.jspecify.annotations..");

  @ArchTest
  static final ArchRule sheetsKnowNoFormat =
      noClasses()
          .that()
          .resideInAPackage("lodeswing.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("lodeswing.render..", "org.apache.pdfbox..");

  @ArchTest
  static final ArchRule vectorModuleStaysInItsPackages =
      noClasses()
          .that()
          .resideOutsideOfPackages("lodeswing.core.integrate.simd..", "lodeswing.core.field.simd..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("jdk.incubator.vector..");

  @ArchTest
  static final ArchRule springStaysInTheShell =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "lodeswing", "lodeswing.web..", "lodeswing.store..", "lodeswing.config..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.springframework..", "jakarta.servlet..");

  @ArchTest
  static final ArchRule jacksonStaysInWebAndStore =
      noClasses()
          .that()
          .resideOutsideOfPackages("lodeswing.web..", "lodeswing.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..");

  @ArchTest
  static final ArchRule metersStayInStoreAndConfig =
      noClasses()
          .that()
          .resideOutsideOfPackages("lodeswing.store..", "lodeswing.config..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("io.micrometer..");

  @ArchTest
  static final ArchRule analysesDoNotKnowTheShell =
      noClasses()
          .that()
          .resideInAnyPackage(
              "lodeswing.analysis..",
              "lodeswing.safety..",
              "lodeswing.figure..",
              "lodeswing.letters..",
              "lodeswing.sheet..",
              "lodeswing.render..",
              "lodeswing.job..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("lodeswing.web..", "lodeswing.store..", "lodeswing.config..");

  @ArchTest
  static final ArchRule analysesDoNotKnowPicturesOrJobs =
      noClasses()
          .that()
          .resideInAnyPackage("lodeswing.analysis..", "lodeswing.safety..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("lodeswing.figure..", "lodeswing.render..", "lodeswing.job..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule storeDoesNotKnowTheWeb =
      noClasses()
          .that()
          .resideInAPackage("lodeswing.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("lodeswing.web..", "lodeswing.config..");

  @ArchTest
  static final ArchRule noAnalysisImportsAnother =
      slices()
          .matching("lodeswing.analysis.(*)..")
          .should()
          .notDependOnEachOther()
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule noCycles = slices().matching("lodeswing.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule noCyclesInCore =
      slices().matching("lodeswing.core.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule noCyclesInWeb =
      slices().matching("lodeswing.web.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule noDrawerPackages =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..service..");

  @ArchTest
  static final ArchRule noDrawerNames =
      noClasses()
          .should()
          .haveSimpleNameEndingWith("Util")
          .orShould()
          .haveSimpleNameEndingWith("Utils")
          .orShould()
          .haveSimpleNameEndingWith("Helper")
          .orShould()
          .haveSimpleNameEndingWith("Manager");
}
