package holdcurve.inference.finding;

import holdcurve.physics.circuit.LeakPath;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.job.Job;
import java.util.List;

/**
 * Whether an injector went on passing fuel after it was fired in a drop test. It does so now and
 * then where one of the set leaks, hardly ever where none does. What injectors pass while open is
 * no row: it says nothing of leaks.
 */
final class StaysOpenLikelihood implements FindingLikelihood {
  private final DetectionModel detection;
  private final LeakPlaces places;
  private final DropTestResult finding;

  StaysOpenLikelihood(DetectionModel detection, Job job, DropTestResult finding) {
    this.detection = detection;
    this.places = new LeakPlaces(job.circuit());
    this.finding = finding;
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public void residuals(CircuitState truth, double[] out, int offset) {
    boolean drips = false;
    for (int m = 0; m < truth.members().size(); m++) {
      List<LeakPath> leaks = truth.leaks(m, CircuitState.ALL_TESTS);
      drips |= places.dripping(truth.members().get(m), leaks).equals(finding.part());
    }
    double seen = drips ? detection.staysOpen() : detection.seemsOpen();
    out[offset] = Deviance.root(finding.staysOpen().isEmpty() ? 1 - seen : seen);
  }
}
