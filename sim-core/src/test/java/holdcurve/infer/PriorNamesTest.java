package holdcurve.infer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.check.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.job.GaugeSpec;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.GaugeLog;
import holdcurve.log.Reading;
import holdcurve.oracle.Circuits;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PriorNamesTest {
  @Test
  void aFaultThatDoesNotExistIsRefused() {
    HoldTest hold =
        HoldTest.of("hold", Set.of(), new GaugeLog("x", List.of(Reading.of(0, 2e5)), 0));
    Job job =
        new Job(
            "car",
            Circuits.SIX_CYLINDER,
            GaugeSpec.usual(),
            List.of(hold),
            Map.of("chek-valve", 3.0),
            List.of());
    String said =
        assertThrows(InputException.class, () -> PriorNames.check(job, FaultCatalogue.load()))
            .getMessage();
    assertEquals("car, priors: there is no fault 'chek-valve'; ", said.substring(0, 45));
  }
}
