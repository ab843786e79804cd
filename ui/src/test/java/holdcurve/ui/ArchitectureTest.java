package holdcurve.ui;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "holdcurve.ui", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule viewModelsKnowNoControl =
      noClasses()
          .that()
          .haveSimpleNameEndingWith("Model")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..")
          .because("a view model is tested without a screen");

  @ArchTest
  static final ArchRule plotsAndFiguresAreData =
      noClasses()
          .that()
          .haveSimpleName("HoldPlot")
          .or()
          .haveSimpleName("Figures")
          .or()
          .haveSimpleName("RankingOrder")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("javafx..")
          .because("what is shown is decided apart from how it is drawn");

  @ArchTest
  static final ArchRule windowUsesTheCoreAndTheThemeOnly =
      classes()
          .that()
          .resideInAPackage("holdcurve.ui.window..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "javafx..",
              "javax.imageio..",
              "javax.sound.sampled..",
              "holdcurve.ui.window..",
              "holdcurve.ui.theme..",
              "holdcurve.common..",
              "holdcurve.physics..",
              "holdcurve.record..",
              "holdcurve.fault..",
              "holdcurve.inference..",
              "holdcurve.advice..",
              "holdcurve.casebook..",
              "holdcurve.bench..",
              "holdcurve.training..",
              "holdcurve.file..",
              "org.commonmark..",
              "holdcurve.ui.about..",
              "holdcurve.ui.guide..",
              "holdcurve.ui.offer..",
              "holdcurve.ui.practice..",
              "holdcurve.ui.problem..",
              "holdcurve.ui.report..",
              "holdcurve.ui.scenario..",
              "holdcurve.ui.schematic..")
          .because("faults are found as plugins, and the command line is another door");

  @ArchTest
  static final ArchRule drawingsAreData =
      noClasses()
          .that()
          .resideInAPackage("holdcurve.ui.schematic..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("javafx..")
          .because("the window and the report draw the same circuit");

  @ArchTest
  static final ArchRule themeKnowsNoPage =
      noClasses()
          .that()
          .resideInAPackage("holdcurve.ui.theme..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("holdcurve.ui.window..")
          .because("colours have roles, whatever page uses them");

  @ArchTest
  static final ArchRule onlyTheThemeKnowsWhoDrawsTheControls =
      noClasses()
          .that()
          .resideOutsideOfPackage("holdcurve.ui.theme..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("atlantafx..")
          .because("another set of control styles then touches one package");

  @ArchTest
  static final ArchRule pagesKnowEachOtherOnlyOneWay =
      slices()
          .matching("holdcurve.ui.(**)")
          .should()
          .beFreeOfCycles()
          .because("a page can then be read, and taken out, by itself");
}
