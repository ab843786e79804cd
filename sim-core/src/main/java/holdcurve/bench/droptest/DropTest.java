package holdcurve.bench.droptest;

import holdcurve.common.input.Require;
import holdcurve.record.finding.DrawOff;
import java.util.List;
import java.util.Optional;

/**
 * A drop-per-pulse test as it was read.
 *
 * @param title what the owner calls it
 * @param resolution step to which the gauge was read [Pa]
 * @param shot how each injector was fired, always alike
 * @param watch from the second reading to the third [s]; 0 where there is no third
 * @param firings in the order they were done
 * @param idleFalls readings without firing, in between
 * @param drawOff fuel drawn off with the drop it made, where the circuit's compliance was measured
 * @param understood what was made of the file, in plain sentences
 */
public record DropTest(
    String title,
    double resolution,
    Shot shot,
    double watch,
    List<Firing> firings,
    List<IdleFall> idleFalls,
    Optional<DrawOff> drawOff,
    List<String> understood) {
  /** Format and version that drop tests carry. */
  public static final String FORMAT = "holdcurve-drop-test/1";

  public DropTest {
    Require.positive(resolution, "step of the gauge", "Pa");
    firings = List.copyOf(firings);
    idleFalls = List.copyOf(idleFalls);
    understood = List.copyOf(understood);
    if (firings.stream().map(Firing::injector).distinct().count() < 2) {
      throw new IllegalArgumentException("a drop test compares at least two injectors");
    }
  }

  /** Without third readings. */
  public DropTest(
      String title,
      double resolution,
      Shot shot,
      List<Firing> firings,
      List<IdleFall> idleFalls,
      Optional<DrawOff> drawOff,
      List<String> understood) {
    this(title, resolution, shot, 0, firings, idleFalls, drawOff, understood);
  }

  /** The injectors, in the order in which they were first fired. */
  public List<String> injectors() {
    return firings.stream().map(Firing::injector).distinct().toList();
  }

  /** All firings of one injector. */
  public List<Firing> of(String injector) {
    return firings.stream().filter(firing -> firing.injector().equals(injector)).toList();
  }

  /** Mean reading before a firing [Pa gauge]. */
  public double meanBefore() {
    return firings.stream().mapToDouble(Firing::before).average().orElseThrow();
  }

  /** Mean drop of all firings [Pa]. */
  public double meanDrop() {
    return firings.stream().mapToDouble(f -> f.before() - f.after()).average().orElseThrow();
  }
}
