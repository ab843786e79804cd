package holdcurve.inference.finding;

import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Seats;
import holdcurve.record.finding.DropCount;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Drops counted at one part's lifted injectors, all counts together: where one of a set drips, the
 * others don't.
 *
 * <p>A count is negative binomial: chance about a mean that itself is known only to the size of a
 * drop and the mood of a seat.
 */
final class DropLikelihood implements FindingLikelihood {
  /** A count with what it needs worked out. */
  private record Count(DropCount finding, double pressure, int test) {}

  private final DetectionModel detection;
  private final LeakPlaces places;
  private final Part part;
  private final int injectors;
  private final List<Count> counts = new ArrayList<>();

  /**
   * @param part the injectors counted at
   * @param findings counts at that part
   */
  DropLikelihood(DetectionModel detection, Job job, Part part, List<DropCount> findings) {
    this.detection = detection;
    this.places = new LeakPlaces(job.circuit());
    this.part = part;
    this.injectors = count(part);
    FindingPressures pressures = new FindingPressures(job);
    for (DropCount finding : findings) {
      counts.add(new Count(finding, pressures.at(finding.when()), pressures.test(finding.when())));
    }
  }

  /** How many injectors a part stands for. */
  static int count(Part part) {
    return part.kind() == Injector.KIND ? (int) Math.round(part.value(Injector.COUNT)) : 1;
  }

  /** Whether a count is clearly more than sound seats give, be they as untight as any. */
  static boolean isDrip(DetectionModel detection, Part part, DropCount count, double pressure) {
    int tips = count.number().isPresent() ? 1 : count(part);
    double weep = detection.untight() * weep(part) * pressure / Seats.TEST_PRESSURE;
    return detection.isMore(count.drops(), detection.drops(tips * weep, tips, count.duration()));
  }

  /** Of one of them when sound, at the test pressure [m³/s]. */
  private static double weep(Part part) {
    return part.value(part.kind() == Injector.KIND ? Injector.WEEP : ColdStartInjector.WEEP);
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public boolean concerns(int test) {
    return counts.stream().anyMatch(count -> count.test() == test);
  }

  @Override
  public void residuals(CircuitState truth, double[] out, int offset) {
    double[] leak = new double[counts.size()];
    for (int m = 0; m < truth.members().size(); m++) {
      List<LeakPath> leaks = truth.leaks(m, CircuitState.ALL_TESTS);
      if (places.dripping(truth.members().get(m), leaks).equals(part.id())) {
        addLeak(truth, m, leak);
      }
    }
    double[] weep = new double[counts.size()];
    for (int i = 0; i < weep.length; i++) {
      weep[i] =
          weep(truth.sound().circuit().part(part.id()))
              * counts.get(i).pressure()
              / Seats.TEST_PRESSURE;
    }
    out[offset] = Deviance.root(probability(leak, weep));
  }

  private void addLeak(CircuitState truth, int member, double[] leak) {
    for (int i = 0; i < leak.length; i++) {
      leak[i] +=
          LeakPlaces.flow(truth.leaks(member, counts.get(i).test()), counts.get(i).pressure());
    }
  }

  /** Over the ways in which a leak can be shared out among the injectors. */
  private double probability(double[] leak, double[] weep) {
    double[] even = new double[injectors];
    Arrays.fill(even, 1.0 / injectors);
    double alike = probability(leak, weep, even);
    if (injectors == 1 || counts.stream().allMatch(c -> c.finding().number().isEmpty())) {
      return alike;
    }
    double one =
        IntStream.range(0, injectors)
            .mapToDouble(k -> probability(leak, weep, only(k)))
            .average()
            .orElseThrow();
    return detection.oneInjector() * one + (1 - detection.oneInjector()) * alike;
  }

  private double[] only(int k) {
    double[] share = new double[injectors];
    share[k] = 1;
    return share;
  }

  private double probability(double[] leak, double[] weep, double[] share) {
    double product = 1;
    for (int i = 0; i < leak.length; i++) {
      DropCount finding = counts.get(i).finding();
      boolean single = finding.number().isPresent();
      int tips = single ? 1 : injectors;
      double leaking = single ? leak[i] * share[finding.number().getAsInt() - 1] : leak[i];
      double mean = detection.drops(leaking + tips * weep[i], tips, finding.duration());
      product *= probability(finding.drops(), mean, detection.unsettled(leaking, tips));
    }
    return product;
  }

  /**
   * Negative binomial about {@code mean}, beside drops of spilt fuel, and a share of leaking
   * injectors that drip anyhow once lifted.
   */
  private double probability(int drops, double mean, double anyhow) {
    double leftOver = detection.leftOver();
    double spilt = Math.pow(leftOver / (1 + leftOver), drops) / (1 + leftOver);
    double anything = drops == 0 ? 0 : 1.0 / (drops * (drops + 1.0));
    return (1 - detection.miscounted() - anyhow) * detection.count(drops, mean)
        + detection.miscounted() * spilt
        + anyhow * anything;
  }
}
