package holdcurve.inference.finding;

import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.Node;
import holdcurve.physics.network.Operation;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;

/**
 * A volume drawn off against what the circuit gives up over that drop: V = ∫ C dp of the fuel that
 * stands in one with the gauge, and of its hose walls c Δp (1 − e^(−t/2τ)), as the drop builds up
 * evenly over the time t. Gaussian.
 */
final class DrawOffLikelihood implements FindingLikelihood {
  /** Intervals of Simpson's rule; storage is smooth in pressure. */
  private static final int PIECES = 8;

  private final DrawOff finding;
  private final Operation operation;
  private final double deviation;

  DrawOffLikelihood(DetectionModel detection, Job job, DrawOff finding) {
    this.finding = finding;
    this.operation = Operation.holding().withClamps(finding.clamped(), 0);
    double perPressure = finding.volume() / (finding.from() - finding.to());
    GaugeSpec gauge = job.gauge();
    double byGauge = perPressure * gauge.roundingUncertainty() * Math.sqrt(2);
    this.deviation =
        Math.hypot(
            Math.hypot(detection.cylinder(), byGauge),
            detection.storageSpread() * finding.volume());
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public void residuals(CircuitState truth, double[] out, int offset) {
    Network network =
        NetworkAssembler.assemble(
            truth.condition(CircuitState.ALL_TESTS), operation, NetworkAssembler.Detail.LUMPED);
    out[offset] = (finding.volume() - given(network)) / deviation;
  }

  private double given(Network network) {
    NetworkLayout layout = network.layout();
    Node node = layout.node(layout.gaugePoint());
    double step = (finding.from() - finding.to()) / PIECES;
    double volume = 0;
    for (int i = 0; i <= PIECES; i++) {
      double weight = i == 0 || i == PIECES ? 1 : i % 2 == 1 ? 4 : 2;
      volume += weight * network.capacity(node.row(), finding.to() + i * step) * step / 3;
    }
    for (NetworkLayout.CreepRow creep : layout.creepRows()) {
      if (creep.node().equals(node)) {
        double taken = 1 - Math.exp(-finding.duration() / (2 * creep.relaxationTime()));
        volume += creep.compliance() * (finding.from() - finding.to()) * taken;
      }
    }
    return volume;
  }
}
