package holdcurve.plugin;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "holdcurve.plugin", importOptions = ImportOption.DoNotIncludeTests.class)
class PluginLayersTest {
  @ArchTest
  static final ArchRule FAULTS_KNOW_ONLY_THE_CONTRACT =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "holdcurve.plugin",
              "holdcurve.fault",
              "holdcurve.physics.circuit",
              "holdcurve.physics.part",
              "holdcurve.physics.flow",
              "holdcurve.physics.fluid",
              "holdcurve.physics.storage",
              "holdcurve.common.caution",
              "holdcurve.common.message")
          .because(
              "a fault says how a circuit changes; how it is solved and ranked is not its business");
}
