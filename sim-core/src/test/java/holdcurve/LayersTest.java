package holdcurve;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
  void storeysStandOnThoseBelow() {
    holds(
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("common")
            .definedBy("holdcurve.common..")
            .layer("physics")
            .definedBy("holdcurve.physics..")
            .layer("record")
            .definedBy("holdcurve.record..")
            .layer("fault")
            .definedBy("holdcurve.fault..")
            .layer("bench")
            .definedBy("holdcurve.bench..")
            .layer("inference")
            .definedBy("holdcurve.inference..")
            .layer("advice")
            .definedBy("holdcurve.advice..")
            .layer("training")
            .definedBy("holdcurve.training..")
            .layer("casebook")
            .definedBy("holdcurve.casebook..")
            .layer("file")
            .definedBy("holdcurve.file..")
            .whereLayer("common")
            .mayNotAccessAnyLayer()
            .whereLayer("physics")
            .mayOnlyAccessLayers("common")
            .whereLayer("record")
            .mayOnlyAccessLayers("physics", "common")
            .whereLayer("fault")
            .mayOnlyAccessLayers("physics", "common")
            .whereLayer("bench")
            .mayOnlyAccessLayers("record", "physics", "common")
            .whereLayer("inference")
            .mayOnlyAccessLayers("fault", "record", "physics", "common")
            .whereLayer("advice")
            .mayOnlyAccessLayers("inference", "fault", "record", "physics", "common")
            .whereLayer("training")
            .mayOnlyAccessLayers("advice", "inference", "fault", "record", "physics", "common")
            .whereLayer("casebook")
            .mayOnlyAccessLayers("advice", "inference", "fault", "record", "physics", "common")
            .whereLayer("file")
            .mayNotBeAccessedByAnyLayer()
            .because("someone who reads one storey needs to know only what is below it"));
  }

  /** Rooms of a storey, lowest first: none uses one that comes after it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "physics: fluid flow ode storage circuit network part hold run balance",
        "inference: prior finding runup answer hypothesis data noise likelihood fit evidence"
            + " posterior explain decision ranking",
        "record: finding refit log limit job"
      })
  void roomsStandInOrder(String order) {
    String storey = order.substring(0, order.indexOf(':'));
    List<String> rooms =
        List.of(order.substring(order.indexOf(' ') + 1).split(" ")).stream()
            .map(room -> "holdcurve." + storey + "." + room)
            .toList();
    assertEquals(
        new TreeSet<>(rooms),
        CORE.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> name.startsWith("holdcurve." + storey + "."))
            .collect(toCollection(TreeSet::new)),
        "every room of the storey is in the list");
    IntStream.range(0, rooms.size() - 1)
        .mapToObj(
            i ->
                noClasses()
                    .that()
                    .resideInAPackage(rooms.get(i))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(rooms.subList(i + 1, rooms.size()).toArray(String[]::new))
                    .because("the rooms of a storey stand in order"))
        .forEach(LayersTest::holds);
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
  void evidenceKnowsNoCircuit() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("holdcurve.inference.evidence")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("holdcurve.physics..", "holdcurve.record..", "holdcurve.fault..")
            .because(
                "evidence is checked against analytic values that have nothing to do with cars"));
  }

  @Test
  void integratorKnowsNoFuel() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("holdcurve.physics.ode")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "holdcurve.physics.network", "holdcurve.physics.fluid", "holdcurve.physics.circuit")
            .because("it is checked on published problems of chemistry and circuits"));
  }

  @Test
  void packagesRunNoCircles() {
    slices()
        .matching("holdcurve.(**)")
        .should()
        .beFreeOfCycles()
        .because("a reader must be able to start somewhere")
        .check(CORE);
  }

  @Test
  void noClassNameStandsTwice() {
    Map<String, List<String>> byName =
        CORE.stream()
            .filter(type -> type.isTopLevelClass() && !type.getSimpleName().equals("package-info"))
            .collect(
                groupingBy(
                    JavaClass::getSimpleName, TreeMap::new, mapping(JavaClass::getName, toList())));
    byName.values().removeIf(names -> names.size() < 2);
    assertEquals(Map.of(), byName);
  }
}
