package holdcurve.ui.window.job;

import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.record.job.Repair;
import holdcurve.record.limit.PassLimit;
import java.util.List;
import java.util.Map;

/**
 * All of a job that an answer about it rests on: not its title, its notes, the ticks of its refit
 * list, or holds with too few readings to count.
 */
record Basis(
    Circuit circuit,
    GaugeSpec gauge,
    List<HoldTest> holds,
    List<Finding> findings,
    Map<String, Double> priors,
    List<Repair> repairs,
    PassLimit pass) {
  static Basis of(Job job) {
    return new Basis(
        job.circuit(),
        job.gauge(),
        RankableTests.of(job).tests().stream().map(test -> TestEdits.noted(test, "")).toList(),
        job.findings(),
        job.priors(),
        job.upkeep().repairs(),
        job.upkeep().pass());
  }
}
