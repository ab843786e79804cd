package holdcurve.record.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.record.log.GaugeLog;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HoldTestTest {
  /** The order of an immutable set differs from one start of the program to the next. */
  @Test
  void clampedHosesStandInOneOrder() {
    GaugeLog log = new GaugeLog("none", List.of(), 0);
    Set<String> hoses = Set.of("return-hose", "feed-hose", "a", "z", "m");
    assertEquals(
        List.of("a", "feed-hose", "m", "return-hose", "z"),
        List.copyOf(HoldTest.of("hold", hoses, log).clamped()));
  }
}
