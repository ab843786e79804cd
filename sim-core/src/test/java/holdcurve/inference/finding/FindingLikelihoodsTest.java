package holdcurve.inference.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

/** What findings say, against probabilities worked out by hand. */
class FindingLikelihoodsTest {
  private static final Circuit CIRCUIT = Circuits.SIX_CYLINDER;
  private static final DetectionModel SEEING = DetectionModel.shipped();
  private static final String[] JOINTS = {"feed-hose", "ring-hoses", "gauge-tee-joint"};

  private static List<FindingLikelihoods.Said> evidence(Circuit circuit, Finding... findings) {
    Job job = new Job("invented", circuit, GaugeSpec.usual(), List.of(), Map.of(), List.of());
    return FindingLikelihoods.of(job.withFindings(List.of(findings)));
  }

  private static double probability(CircuitState truth, Finding... findings) {
    Job job =
        new Job(
                "invented",
                truth.sound().circuit(),
                GaugeSpec.usual(),
                List.of(),
                Map.of(),
                List.of())
            .withFindings(List.of(findings));
    double product = 1;
    for (FindingLikelihoods.Said said : FindingLikelihoods.of(job)) {
      double[] rows = new double[said.evidence().rows()];
      said.evidence().residuals(truth, rows, 0);
      for (double r : rows) {
        product *= Math.exp(-0.5 * r * r);
      }
    }
    return product;
  }

  private static CircuitState wetting(double flow) {
    return Supposed.leak(CIRCUIT, "rail", Circuit.AIR, flow, JOINTS);
  }

  private static CircuitState dripping(double flow) {
    return Supposed.leak(CIRCUIT, "rail", Circuit.MANIFOLD, flow, "injectors");
  }

  /**
   * 0.02 mL/min is the leak that every other look finds; one joint of three has it, and in two of a
   * hundred cases its fuel has run along to the others.
   */
  @Test
  void aWetJointIsSeenOrSpiltOn() {
    double noticed = 0.95 * 0.5;
    double beside = 3e-4 + 0.02 * noticed;
    double there = 1 - (1 - beside) * (1 - noticed);
    JointLook wet = JointLook.of("feed-hose", true);
    assertEquals((there + 2 * beside) / 3, probability(wetting(0.02), wet), 1e-9);
    assertEquals(3e-4, probability(Supposed.sound(CIRCUIT), wet), 1e-12);
  }

  /** Wiped, a quarter of that is seen as often, and nothing else wets a joint. */
  @Test
  void aWipedJointThatIsWetAgainLeaks() {
    double noticed = 0.95 * 0.5;
    double beside = 1e-6 + 0.02 * noticed;
    double there = 1 - (1 - beside) * (1 - noticed);
    JointLook wet = JointLook.of("feed-hose", true).afterWiping();
    assertEquals((there + 2 * beside) / 3, probability(wetting(0.005), wet), 1e-9);
    assertEquals(1e-6, probability(Supposed.sound(CIRCUIT), wet), 1e-12);
  }

  @Test
  void ofTwoFindingsThatContradictEachOtherNeitherCounts() {
    JointLook wet = JointLook.of("feed-hose", true);
    assertEquals(List.of(), evidence(CIRCUIT, wet, JointLook.allDry()));
    assertEquals(
        probability(wetting(5), JointLook.of("ring-hoses", false)),
        probability(
            wetting(5), wet, JointLook.of("ring-hoses", false), JointLook.of("feed-hose", false)),
        1e-12);
  }

  @Test
  void aWeepIsMissedAndAStreamIsNot() {
    double weep = probability(wetting(0.002), JointLook.allDry());
    double stream = probability(wetting(2), JointLook.allDry());
    assertEquals((1 - 3e-4 - 0.02 * 0.95 / 101) * (1 - 0.95 / 101), weep, 1e-9);
    assertTrue(stream < 0.05, "a stream is overlooked with probability " + stream);
  }

  /** A leak at one of three joints, two of which are dry, is at the third. */
  @Test
  void dryJointsPointToTheOthers() {
    JointLook[] looks = {JointLook.of("feed-hose", false), JointLook.of("ring-hoses", false)};
    double two = probability(wetting(5), looks);
    double dry = 1 - 3e-4 - 0.02 * 0.95;
    assertEquals(dry * dry / 3, two, 0.04);
  }

  @Test
  void anEndInAnotherStretchSaysNothingOfThisOne() {
    JointLook beyond =
        new JointLook(Optional.of("feed-hose"), Optional.of("filter-outlet"), false, Moment.PRIMED);
    assertEquals(1 - 3e-4, probability(wetting(5), beyond), 1e-9);
  }

  @Test
  void fuelInTheThinHoseSpeaksForTheDiaphragm() {
    CircuitState torn = Supposed.leak(CIRCUIT, "regulator-inlet", Circuit.MANIFOLD, 1, "regulator");
    Finding fuel = new ReferenceHoseLook(true, Moment.PRIMED);
    assertTrue(probability(torn, fuel) > 0.94);
    assertEquals(1e-6, probability(dripping(1), fuel), 1e-12);
  }

  private static DropTestResult dropTest(List<String> low, List<String> open, boolean watched) {
    return new DropTestResult(
        "injectors", low, List.of("6"), open, watched, java.util.Optional.empty());
  }

  /** What injectors pass while open is about delivery: it moves no odds at all. */
  @Test
  void deliverySaysNothingOfLeaks() {
    assertEquals(List.of(), evidence(CIRCUIT, dropTest(List.of("3"), List.of(), false)));
    DropTestResult watched = dropTest(List.of("3"), List.of(), true);
    assertEquals(
        probability(dripping(1), dropTest(List.of(), List.of(), true)),
        probability(dripping(1), watched),
        0);
  }

  /** One in five leaking sets shows it, one in two hundred sound ones seems to. */
  @Test
  void anInjectorThatDoesNotShutIsALeak() {
    DropTestResult open = dropTest(List.of(), List.of("5"), true);
    assertEquals(0.2, probability(dripping(1), open), 1e-12);
    assertEquals(0.005, probability(Supposed.sound(CIRCUIT), open), 1e-12);
    assertEquals(0.005, probability(wetting(1), open), 1e-12);
    DropTestResult shut = dropTest(List.of(), List.of(), true);
    assertEquals(0.8, probability(dripping(1), shut), 1e-12);
    assertEquals(0.995, probability(Supposed.sound(CIRCUIT), shut), 1e-12);
  }

  /**
   * Chance about a mean that is itself gamma distributed, by Simpson's rule over Commons Math's
   * distributions. 0.33 mL/min in all, at 30 drops to the millilitre, is 10 drops a minute.
   */
  @Test
  void aDropCountIsPoissonAboutAnUncertainMean() {
    double weep = 6 * CIRCUIT.part("injectors").value(Injector.WEEP);
    double flow = 0.33 / 60e6 + weep;
    double mean = SEEING.drops(flow, 6, 120);
    double shape = 1 / (0.35 * 0.35 + 0.25 * 0.25);
    GammaDistribution about = new GammaDistribution(shape, mean / shape);
    double mixed =
        new SimpsonIntegrator()
            .integrate(
                1_000_000,
                m -> about.density(m) * new PoissonDistribution(m).probability(15),
                1e-3,
                10 * mean);
    double leaking = 0.33 / (0.33 + 6 * 0.001);
    double anyhow = 0.1 * leaking / (15 * 16);
    double spilt = 0.02 * Math.pow(1 / 3.0, 15) * 2 / 3;
    double expected = (0.98 - 0.1 * leaking) * mixed + anyhow + spilt;
    assertEquals(
        expected, probability(dripping(0.33), DropCount.ofAll("injectors", 15, 120)), 1e-6);
  }

  @Test
  void noDropAtAllSpeaksAgainstADrip() {
    double dry = probability(dripping(0.5), DropCount.ofAll("injectors", 0, 300));
    double sound = probability(Supposed.sound(CIRCUIT), DropCount.ofAll("injectors", 0, 300));
    assertTrue(dry < 0.02, "under a drip: " + dry);
    assertTrue(sound > 0.15, "sound: " + sound);
  }

  /** Either one drips, the others don't, or all drip alike; both speak for a leak. */
  @Test
  void oneInjectorOfTheSetMayHaveItAll() {
    Finding[] counts = {
      DropCount.ofOne("injectors", 3, 50, 300),
      DropCount.ofOne("injectors", 1, 0, 300),
      DropCount.ofOne("injectors", 2, 0, 300)
    };
    Finding[] even = {
      DropCount.ofOne("injectors", 3, 8, 300),
      DropCount.ofOne("injectors", 1, 8, 300),
      DropCount.ofOne("injectors", 2, 8, 300)
    };
    assertTrue(probability(dripping(0.33), counts) > 50 * probability(dripping(0.02), counts));
    assertTrue(probability(dripping(0.33), even) > 50 * probability(dripping(0.02), even));
  }

  /**
   * What 29 mL more of air in the gauge hose give up from 2 to 1.6 bar, by pV = const: 29 mL ·
   * 1.01325 bar · (1/2.61325 − 1/3.01325)/bar = 1.4927 mL.
   */
  @Test
  void aDrawOffIsComparedWithWhatTheCircuitStores() {
    double little = foretold(CIRCUIT);
    double much = foretold(CIRCUIT.with("gauge-tee", Gauge.AIR, 30e-6));
    assertEquals(1.4927e-6, much - little, 2e-10);
  }

  /** Volume at which the residual is nil [m³]. */
  private static double foretold(Circuit circuit) {
    return new BrentSolver(1e-13)
        .solve(
            100,
            volume -> {
              Finding drawn = new DrawOff(volume, 2e5, 1.6e5, 10, Set.of("feed-hose"));
              double[] row = new double[1];
              evidence(circuit, drawn).get(0).evidence().residuals(Supposed.sound(circuit), row, 0);
              return row[0];
            },
            1e-8,
            1e-5);
  }
}
