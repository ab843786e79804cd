package holdcurve.inference.finding;

import holdcurve.physics.part.Regulator;
import holdcurve.record.finding.Moment;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;

/** Under which pressure something was looked at. */
final class FindingPressures {
  private final Job job;

  FindingPressures(Job job) {
    this.job = job;
  }

  /** Mean pressure of a moment [Pa gauge]. */
  double at(Moment moment) {
    return moment
        .pressure()
        .orElseGet(() -> moment.test().map(this::ofTest).orElseGet(this::primed));
  }

  /** Place of a moment's hold test in the job, or {@link CircuitState#ALL_TESTS}. */
  int test(Moment moment) {
    for (int i = 0; i < job.tests().size(); i++) {
      if (moment.test().filter(job.tests().get(i).id()::equals).isPresent()) {
        return i;
      }
    }
    return CircuitState.ALL_TESTS;
  }

  private double ofTest(String id) {
    HoldTest test = job.tests().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    return test.log().hold().stream().mapToDouble(Reading::pressure).average().orElse(primed());
  }

  private double primed() {
    return job.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
  }
}
