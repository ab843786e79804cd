package holdcurve.ui.window.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.window.BelievedRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.OpenJobModel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is tried and what follows from it, without a screen. */
class WhatIfModelTest {
  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, BelievedRanking::new, Runnable::run, Runnable::run);
  private final WhatIfModel model = new WhatIfModel(jobs);

  @BeforeEach
  void open() {
    jobs.open(Jobs.TWO_HOLDS);
  }

  private double afterTenMinutes() {
    double[] curve = model.holdsProperty().get().after().curve().middle();
    return curve[curve.length - 1];
  }

  private Remedy remedy(String name) {
    return model.remedies().stream()
        .filter(one -> one.offer().name().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void likelierRepairsHaveBetterChances() {
    assertTrue(remedy("Check valve").chance() > remedy("Injector").chance());
    assertTrue(remedy("Injector").chance() > remedy("Regulator").chance());
  }

  @Test
  void aRepairLiftsTheHoldAndBackIsBack() {
    double asItIs = afterTenMinutes();
    remedy("Check valve").triedProperty().set(true);
    assertTrue(afterTenMinutes() > asItIs + 1e4, "after the repair " + afterTenMinutes());
    assertTrue(
        model.figuresProperty().get().after().hold().passChance()
            > model.figuresProperty().get().before().hold().passChance());
    model.reset();
    assertEquals(asItIs, afterTenMinutes());
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
    remedy("Check valve").triedProperty().set(true);
    assertEquals(model.beforePlot().time(), model.afterPlot().time());
    assertTrue(model.beforePlot().marks().size() > 3);
    assertTrue(model.afterPlot().marks().isEmpty());
  }
}
