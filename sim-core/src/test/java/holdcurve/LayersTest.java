package holdcurve;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** Which package may know which. Each rule says why. */
class LayersTest {
  private static final JavaClasses CORE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("holdcurve");

  private static void holds(ArchRule rule) {
    rule.check(CORE);
  }

  @Test
  void coreKnowsNoScreen() {
    holds(
        noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..", "picocli..")
            .because("the same services answer the terminal, the window and the tests"));
  }

  @Test
  void physicsKnowsNoInference() {
    holds(
        noClasses()
            .that()
            .resideInAnyPackage(
                "holdcurve.fluid..",
                "holdcurve.flow..",
                "holdcurve.line..",
                "holdcurve.ode..",
                "holdcurve.model..",
                "holdcurve.circuit..",
                "holdcurve.part..",
                "holdcurve.hold..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "holdcurve.infer..", "holdcurve.evidence..", "holdcurve.file..", "holdcurve.job..")
            .because("a circuit behaves the same whoever asks, and whatever was read"));
  }

  @Test
  void evidenceKnowsNoCircuit() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("holdcurve.evidence..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("holdcurve.circuit..", "holdcurve.model..", "holdcurve.infer..")
            .because(
                "evidence is checked against analytic values that have nothing to do with cars"));
  }

  @Test
  void integratorKnowsNoFuel() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("holdcurve.ode..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("holdcurve.model..", "holdcurve.fluid..", "holdcurve.circuit..")
            .because("it is checked on published problems of chemistry and circuits"));
  }

  @Test
  void packagesRunNoCircles() {
    slices()
        .matching("holdcurve.(*)..")
        .should()
        .beFreeOfCycles()
        .because("a reader must be able to start somewhere")
        .check(CORE);
  }
}
