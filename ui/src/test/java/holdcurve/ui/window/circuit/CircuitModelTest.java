package holdcurve.ui.window.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page without a screen, and where parts are placed. */
class CircuitModelTest {
  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private final CircuitModel model =
      new CircuitModel(jobs, new FaultsModel(FaultCatalogue::load, null));

  @BeforeEach
  void open() {
    jobs.open(Jobs.TWO_HOLDS);
    model.chosenProperty().set("regulator");
  }

  private Part regulator() {
    return jobs.jobProperty().get().circuit().part("regulator");
  }

  @Test
  void aValueIsChangedInPlaceAndTakenBack() {
    assertTrue(model.set(Regulator.SET, "2,3"));
    assertEquals(2.3e5, regulator().value(Regulator.SET), 1e-6);
    assertEquals("set of regulator", jobs.undoNameProperty().get());
    jobs.undo();
    assertEquals(2e5, regulator().value(Regulator.SET), 1e-6);
  }

  @Test
  void whatIsOutsideTheLimitsIsRefusedWithTheLimits() {
    Circuit before = jobs.jobProperty().get().circuit();
    assertFalse(model.set(Regulator.SET, "23"));
    assertTrue(
        model.problemProperty().get().endsWith("give 0.5 to 6 bar."),
        model.problemProperty().get());
    assertFalse(model.set(Regulator.SET, "a lot"));
    assertEquals(before, jobs.jobProperty().get().circuit());
    assertTrue(model.set(Regulator.SET, "2.2"));
    assertEquals("", model.problemProperty().get());
  }

  @Test
  void anEmptyValueIsLeftToItsDefault() {
    model.set(Regulator.GAIN, "40");
    assertTrue(regulator().states(Regulator.GAIN));
    model.set(Regulator.GAIN, "");
    assertFalse(regulator().states(Regulator.GAIN));
    assertEquals(Regulator.GAIN.standard(), regulator().value(Regulator.GAIN));
    assertEquals(Unit.LITRE_PER_MINUTE_BAR, Regulator.GAIN.unit());
  }

  @Test
  void pressuresAreInTheUnitChosen() {
    jobs.pressures().unitProperty().set(PressureUnit.KPA);
    assertEquals("200", PartWords.value(regulator(), Regulator.SET, model.pressures()));
    model.set(Regulator.SET, "210");
    assertEquals(2.1e5, regulator().value(Regulator.SET), 1e-6);
  }

  @Test
  void theSuspectLookedAtLightsUpItsParts() {
    jobs.ranking().chosenProperty().set(jobs.ranking().resultProperty().get().suspects().get(0));
    assertEquals(Set.of("check-valve"), model.litProperty().get());
    jobs.ranking().chosenProperty().set(null);
    assertEquals(Set.of(), model.litProperty().get());
  }

  @Test
  void theKeysGoFromPartToPart() {
    model.chosenProperty().set("");
    model.go(1);
    assertEquals("tank", model.chosenProperty().get());
    model.go(-1);
    assertEquals("return-pipe", model.chosenProperty().get());
  }

  static List<CircuitTemplates.Template> templates() {
    return CircuitTemplates.all();
  }

  @ParameterizedTest
  @MethodSource("templates")
  void everyPartIsDrawnOnceOnThePaperAndApartFromTheOthers(CircuitTemplates.Template template) {
    Circuit circuit = CircuitTemplates.circuit(template);
    Drawing drawing = CircuitLayout.of(circuit);
    assertEquals(circuit.parts(), drawing.parts().stream().map(Drawing.Placed::part).toList());
    Set<List<Double>> places = new HashSet<>();
    for (Drawing.Placed placed : drawing.parts()) {
      assertTrue(placed.x() > 0 && placed.x() < drawing.width(), placed::toString);
      assertTrue(placed.y() > 0 && placed.y() < drawing.height(), placed::toString);
      boolean line = placed.stand() == Drawing.Stand.RIGHT || placed.stand() == Drawing.Stand.LEFT;
      double side = line ? 0 : placed.stand().ordinal();
      assertTrue(places.add(List.of(placed.x(), placed.y(), side)), placed::toString);
    }
    assertTrue(
        drawing.width() < 1500 && drawing.height() < 620,
        drawing.width() + " by " + drawing.height());
  }

  @ParameterizedTest
  @MethodSource("templates")
  void everyTemplateIsMarkedInventedAndCanBeClamped(CircuitTemplates.Template template) {
    Circuit circuit = CircuitTemplates.circuit(template);
    assertTrue(circuit.title().endsWith("(invented)"), circuit.title());
    assertTrue(Hose.clampable(circuit).size() >= 2);
  }
}
