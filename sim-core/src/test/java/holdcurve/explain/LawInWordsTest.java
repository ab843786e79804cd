package holdcurve.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.circuit.LeakPath;
import holdcurve.flow.FlowLaw;
import holdcurve.flow.LaminarLaw;
import holdcurve.flow.OpeningJointLaw;
import holdcurve.flow.OrificeLaw;
import holdcurve.flow.SeatLaw;
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
    says(OpeningJointLaw.throughPoint(FLOW, 2e5, 1.2e5, 1e3), "Dry below about 1.2 bar");
  }

  @Test
  void softSeatHardlySlackens() {
    says(SeatLaw.throughPoint(FLOW, 2e5, 1e4, 0.8), "hardly slackens");
  }

  @Test
  void noFlowIsSaidSo() {
    says(new LaminarLaw(0), "nothing at 2 bar");
  }

  private static void says(FlowLaw law, String... words) {
    String text = LawInWords.of(new LeakPath("rail", "air", law));
    for (String word : words) {
      assertTrue(text.contains(word), () -> word + ": " + text);
    }
  }
}
