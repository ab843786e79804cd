package holdcurve.inference.finding;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import org.junit.jupiter.api.Test;

class DetectionModelTest {
  /**
   * A handbook of the trade counts 30 drops of petrol to the gram, not to the millilitre; a drop is
   * allowed its own spread about that. 740 kg/m³.
   */
  @OutsideCheck(
      what = "mass of a drop of petrol",
      source = "Buchheister, Handbuch der Drogisten-Praxis, 3rd ed., 1893, p. 43: 30 drops to 1 g",
      value = "33.3 mg",
      tolerance = 35,
      unit = "%")
  @Test
  void aDropWeighsWhatTheTradeSays() {
    OutsideChecks.holds("mass of a drop of petrol", DetectionModel.shipped().drop() * 740 * 1e6);
  }
}
