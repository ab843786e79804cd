package holdcurve.ui.window.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.ui.window.BelievedRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is tried and what follows from it, without a screen. */
class WhatIfModelTest {
  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, BelievedRanking::new, Runnable::run, Runnable::run);
  private final WhatIfModel model = new WhatIfModel(jobs, FaultCatalogue::load);

  @BeforeEach
  void open() {
    jobs.open(Jobs.TWO_HOLDS);
  }

  private double afterTwoMinutes() {
    double[] curve = model.holdsProperty().get().after().curve().middle();
    return curve[curve.length / 5];
  }

  private Remedy remedy(String name) {
    return model.remedies().stream()
        .filter(one -> one.offer().name().startsWith("put right: " + name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void likelierRepairsHaveBetterChances() {
    assertTrue(remedy("check valve").chance() > remedy("injector").chance());
    assertTrue(remedy("injector").chance() > remedy("regulator").chance());
  }

  @Test
  void aRepairLiftsTheHoldAndBackIsBack() {
    double asItIs = afterTwoMinutes();
    remedy("check valve").triedProperty().set(true);
    assertTrue(afterTwoMinutes() > asItIs + 1e4, "after the repair " + afterTwoMinutes());
    assertTrue(
        model.figuresProperty().get().after().hold().passChance()
            > model.figuresProperty().get().before().hold().passChance());
    model.reset();
    assertEquals(asItIs, afterTwoMinutes());
    assertTrue(model.tried().isNone());
  }

  @Test
  void aSliderMovesTheCurve() {
    Lever set =
        model.levers().stream().filter(l -> l.name().endsWith("set pressure")).findFirst().get();
    set.valueProperty().set(1.2 * set.valueProperty().get());
    double[] before = model.holdsProperty().get().before().curve().middle();
    double[] after = model.holdsProperty().get().after().curve().middle();
    assertEquals(1.2, after[0] / before[0], 0.05);
    assertEquals(1, model.tried().what().size());
  }

  @Test
  void bothPlotsHaveTheSameAxes() {
    remedy("check valve").triedProperty().set(true);
    assertEquals(model.beforePlot().time(), model.afterPlot().time());
    assertTrue(model.beforePlot().marks().size() > 3);
    assertTrue(model.afterPlot().marks().isEmpty());
  }

  @Test
  void aStifferHoseFallsFaster() {
    double asItIs = afterTwoMinutes();
    for (Swap swap : model.swaps()) {
      swap.choices().stream()
          .filter(choice -> choice.words().equals("plastic line"))
          .forEach(swap.chosenProperty()::set);
    }
    assertTrue(afterTwoMinutes() < asItIs - 1e4, "less to give up: " + afterTwoMinutes());
    model.reset();
    assertEquals(asItIs, afterTwoMinutes());
  }

  @Test
  void anAddedFaultPullsTheCurveDownUntilItIsTakenBack() {
    double asItIs = afterTwoMinutes();
    AddableFault joint =
        model.addable().stream()
            .filter(one -> one.fault().id().equals("rail-side-joint"))
            .findFirst()
            .orElseThrow();
    assertTrue(joint.change("nothing", model.jobs().pressures()).isEmpty());
    model.add(joint.change("0,5", model.jobs().pressures()).orElseThrow());
    assertTrue(afterTwoMinutes() < asItIs - 1e4, "with a leak " + afterTwoMinutes());
    model.remove(model.extras().get(0));
    assertEquals(asItIs, afterTwoMinutes());
  }

  @Test
  void aRenewedCheckValveCuresWhatSitsInIt() {
    double asItIs = afterTwoMinutes();
    model.renew(
        model.renewable().stream().filter(p -> p.id().equals("check-valve")).findFirst().get());
    assertTrue(afterTwoMinutes() > asItIs + 1e4);
    assertEquals(List.of("check valve replaced by a sound one"), model.tried().what());
  }

  @Test
  void whatWasTriedIsTakenBackStepByStep() {
    Swap hose = model.swaps().get(0);
    hose.chosenProperty().set(hose.choices().get(1));
    model.renew(model.renewable().get(0));
    Lever lever = model.levers().get(0);
    double asItIs = lever.valueProperty().get();
    lever.valueProperty().set(1.1 * asItIs);
    lever.valueProperty().set(1.2 * asItIs);
    List<String> all = model.tried().what();
    model.reset();
    assertTrue(model.tried().isNone());
    assertTrue(model.takeBack());
    assertEquals(all, model.tried().what());
    assertTrue(model.takeBack());
    assertEquals(asItIs, lever.valueProperty().get());
    assertTrue(model.takeBack());
    assertTrue(model.extras().isEmpty());
    assertTrue(model.takeBack());
    assertTrue(model.tried().isNone());
    assertFalse(model.takeBack());
  }

  @Test
  void setPressuresShowInTheUnitChosen() {
    Lever set =
        model.levers().stream().filter(l -> l.name().endsWith("set pressure")).findFirst().get();
    assertTrue(set.text(jobs.pressures()).endsWith(" bar"));
    jobs.pressures().unitProperty().set(PressureUnit.PSI);
    assertTrue(set.text(jobs.pressures()).endsWith(" psi"));
  }

  @Test
  void hotFuelIsSaidToBoil() {
    Lever fuel =
        model.levers().stream().filter(l -> l.name().startsWith("Fuel at")).findFirst().get();
    assertEquals(List.of(), model.figuresProperty().get().notes());
    fuel.valueProperty().set(60);
    String note = String.join(" ", model.figuresProperty().get().notes());
    assertTrue(note.startsWith("At 60 °C this fuel boils in the open"), note);
  }
}
