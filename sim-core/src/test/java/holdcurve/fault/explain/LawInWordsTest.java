package holdcurve.fault.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OpeningJointLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.flow.SeatLaw;
import org.junit.jupiter.api.Test;

/** Flow at 1 bar over flow at 2 bar: one half laminar, the root of one half through a hole. */
class LawInWordsTest {
  private static final double FLOW = 0.5e-6 / 60;

  @Test
  void laminarIsInProportion() {
    says(LaminarLaw.throughPoint(FLOW, 2e5), "0.5 mL/min at 2 bar", "50 %", "in proportion");
  }

  @Test
  void holeSlackensByTheRoot() {
    says(OrificeLaw.throughPoint(FLOW, 2e5, 10), "71 %", "small hole");
  }

  @Test
  void jointDriesUp() {
    says(OpeningJointLaw.throughPoint(FLOW, 2e5, 1.2e5, 1e3), "Nothing below about 1.2 bar");
  }

  @Test
  void softSeatHardlySlackens() {
    says(SeatLaw.throughPoint(FLOW, 2e5, 1e4, 0.8), "hardly slackens");
  }

  /** A tenth of a bar is all that a return has. */
  @Test
  void thePressureOfTheSizeIsTheOneSaid() {
    saysOfSize(
        "leak at 0.1 bar with the pump running",
        LaminarLaw.throughPoint(FLOW, 1e4),
        "0.5 mL/min at 0.1 bar",
        "At 0.05 bar it passes 50 %");
  }

  @Test
  void noFlowIsSaidSo() {
    says(new LaminarLaw(0), "nothing at 2 bar");
  }

  private static void says(FlowLaw law, String... words) {
    saysOfSize("leak at 2 bar", law, words);
  }

  private static void saysOfSize(String size, FlowLaw law, String... words) {
    FaultParameter parameter =
        new FaultParameter(
            size, Unit.MILLILITRE_PER_MINUTE, new Prior.LogNormal(1e-9, 2), "assumed", false);
    String text = LawInWords.of(new LeakPath("rail", "air", law), parameter);
    for (String word : words) {
      assertTrue(text.contains(word), () -> word + ": " + text);
    }
  }
}
