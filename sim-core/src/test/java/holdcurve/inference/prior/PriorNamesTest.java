package holdcurve.inference.prior;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.oracle.Circuits;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
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
