package holdcurve.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What holds for every fault of the first set. */
class ShippedFaultsTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();

  @Test
  void everyFaultClassIsRegistered() {
    List<String> classes =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("holdcurve.plugin")
                .stream()
                .filter(type -> type.isAssignableTo(LeakFault.class))
                .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
                .map(JavaClass::getSimpleName)
                .toList();
    assertEquals(List.of(), CATALOGUE.problems());
    assertEquals(classes.size(), CATALOGUE.faults().size(), classes::toString);
  }

  @Test
  void everyFaultStandsInTheDataFile() {
    List<String> missing =
        CATALOGUE.faults().stream()
            .map(LeakFault::id)
            .filter(id -> !FaultPriors.shipped().rates().containsKey(id))
            .toList();
    assertEquals(List.of(), missing);
    assertEquals(CATALOGUE.faults().size(), FaultPriors.shipped().rates().size());
  }

  @Test
  void everyPriorNamesItsSource() {
    for (LeakFault fault : CATALOGUE.faults()) {
      for (FaultParameter parameter : fault.parameters()) {
        assertTrue(
            parameter.source().startsWith("assumed: ")
                || parameter.source().startsWith("common practice: "),
            () -> fault.id() + ": " + parameter.source());
      }
    }
  }

  @Test
  void everyTextIsASentence() {
    for (LeakFault fault : CATALOGUE.faults()) {
      assertTrue(fault.symptoms().endsWith("."), fault.id());
      assertTrue(fault.repair().endsWith("."), fault.id());
      assertTrue(!fault.name().endsWith("."), fault.id());
    }
  }

  /** What a repair sends someone to, and the caution that has to stand before it. */
  private static final Map<String, Caution> BEFORE =
      Map.of(
          "look again", Caution.COLD_LAMP,
          "prime and look", Caution.COLD_LAMP,
          "thin hose off", Caution.COLD_LAMP,
          "lift the injectors", Caution.INJECTORS_HELD,
          "unscrew it", Caution.NOTHING_FIRES,
          "return hose", Caution.RETURN_CAN,
          "the delivery", Caution.RETURN_CAN,
          "bleed", Caution.FLUSH_RETURN,
          "clamp or plug", Caution.DEAD_HEAD);

  @Test
  void everyRepairHasItsCautionBeforeTheStep() {
    Set<String> seen = new TreeSet<>();
    for (LeakFault fault : CATALOGUE.faults()) {
      BEFORE.forEach(
          (step, caution) -> {
            int at = fault.repair().indexOf(step);
            if (at >= 0) {
              seen.add(step);
              int said = fault.repair().indexOf(caution.text());
              assertTrue(said >= 0 && said < at, () -> fault.id() + ": " + fault.repair());
            }
          });
    }
    assertEquals(BEFORE.keySet(), seen, "steps that no repair has");
  }

  /**
   * The guard would refuse a bad site or condition; the leak has to be of the size that it says.
   */
  @Property
  void everyDrawFromThePriorsGivesThatLeak(@ForAll long seed) {
    Random random = new Random(seed);
    for (LeakFault fault : CATALOGUE.faults()) {
      List<FaultParameter> parameters = fault.parameters();
      double[] values =
          parameters.stream().mapToDouble(p -> p.prior().at(random.nextGaussian())).toArray();
      for (Site site : fault.sites(TestStand.CIRCUIT)) {
        Condition after = fault.apply(TestStand.sound(), site, values);
        if (parameters.get(0).unit() == Unit.MILLILITRE_PER_MINUTE) {
          double stated = TestStand.law(after).flow(statedAt(parameters.get(0)));
          assertEquals(values[0], stated, 1e-6 * values[0], fault.id());
        }
      }
    }
  }

  /** The pressure that "leak at 2 bar" names [Pa]. */
  private static double statedAt(FaultParameter size) {
    String bar = size.name().replaceFirst("leak at ([0-9.]+) bar.*", "$1");
    return TestStand.bar(Double.parseDouble(bar));
  }

  /** 1 mbar is less than any gauge here can show. */
  @Test
  void thoseThatShowChangeTheCurve() {
    for (LeakFault fault : CATALOGUE.showingInHold().faults()) {
      double change =
          TestStand.fall(TestStand.median(fault), TestStand.NO_CLAMP)
              - TestStand.fall(TestStand.sound(), TestStand.NO_CLAMP);
      assertTrue(change > 0.05, () -> fault.id() + " " + change + " bar");
    }
    assertEquals(11, CATALOGUE.showingInHold().faults().size());
  }
}
