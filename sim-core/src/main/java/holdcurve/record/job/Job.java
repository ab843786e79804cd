package holdcurve.record.job;

import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.Finding;
import java.util.List;
import java.util.Map;

/**
 * One circuit and everything that was found out about it.
 *
 * @param title what the owner calls it
 * @param circuit the circuit as described
 * @param gauge the gauge its readings come from
 * @param tests hold tests, in the order they were done
 * @param findings what was seen, counted or measured beside the gauge
 * @param priors fault id → how many times likelier than usual the user thinks it [-]
 * @param understood what was made of the files, in plain sentences
 * @param upkeep repairs, pass limit and refit list
 */
public record Job(
    String title,
    Circuit circuit,
    GaugeSpec gauge,
    List<HoldTest> tests,
    List<Finding> findings,
    Map<String, Double> priors,
    List<Message> understood,
    Upkeep upkeep) {
  /** With other opinions of how likely faults are. */
  public Job withPriors(Map<String, Double> others) {
    return new Job(title, circuit, gauge, tests, findings, others, understood, upkeep);
  }

  /** Format and version that job files carry. */
  public static final String FORMAT = "holdcurve-job/1";

  public Job {
    tests = List.copyOf(tests);
    findings = List.copyOf(findings);
    priors = Map.copyOf(priors);
    understood = List.copyOf(understood);
  }

  /** A job without findings and repairs, with the usual pass limit and refit list. */
  public Job(
      String title,
      Circuit circuit,
      GaugeSpec gauge,
      List<HoldTest> tests,
      Map<String, Double> priors,
      List<Message> understood) {
    this(title, circuit, gauge, tests, List.of(), priors, understood, Upkeep.none(circuit));
  }

  /** The same job with other hold tests. */
  public Job withTests(List<HoldTest> others) {
    return new Job(title, circuit, gauge, others, findings, priors, understood, upkeep);
  }

  /** The same job with other findings. */
  public Job withFindings(List<Finding> others) {
    return new Job(title, circuit, gauge, tests, others, priors, understood, upkeep);
  }

  /** The same job with other repairs, pass limit or refit list. */
  public Job withUpkeep(Upkeep other) {
    return new Job(title, circuit, gauge, tests, findings, priors, understood, other);
  }
}
