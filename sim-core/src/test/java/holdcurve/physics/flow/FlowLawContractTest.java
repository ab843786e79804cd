package holdcurve.physics.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What {@link FlowLaw} promises, for all laws of this package. */
class FlowLawContractTest {
  private static final double VISCOSITY = 0.45e-3;
  private static final double DENSITY = 740;

  @Provide
  Arbitrary<FlowLaw> laws() {
    Arbitrary<Double> flow =
        Arbitraries.doubles().between(0.1, 1000).map(nanolitres -> 1e-12 * nanolitres);
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1).ofScale(6);
    Arbitrary<Double> width = Arbitraries.doubles().between(100, 5e4);
    return Arbitraries.oneOf(
        flow.map(q -> LaminarLaw.throughPoint(q, 2e5)),
        Combinators.combine(flow, width).as((q, w) -> OrificeLaw.throughPoint(q, 2e5, w)),
        Combinators.combine(flow, share, width)
            .as((q, m, w) -> SeatLaw.throughPoint(q, 2e5, 4 * w, m)),
        Combinators.combine(flow, share, width)
            .as((q, s, w) -> OpeningJointLaw.throughPoint(q, 2e5, 2e5 * s, w)),
        pipes(),
        Combinators.combine(pipes(), Arbitraries.doubles().between(0.1, 100)).as(RoundedLaw::new));
  }

  private static Arbitrary<FlowLaw> pipes() {
    Arbitrary<Double> bore =
        Arbitraries.doubles().between(0.1, 12).map(millimetres -> 1e-3 * millimetres);
    Arbitrary<Double> length = Arbitraries.doubles().between(0.1, 5);
    Arbitrary<Double> roughness = Arbitraries.doubles().between(0, 0.049).ofScale(6);
    Arbitrary<Double> fittings = Arbitraries.of(0.0, 1.5, 12.0);
    return Combinators.combine(bore, length, roughness, fittings)
        .as((d, l, r, k) -> new PipeLaw(new Pipe(d, l, r * d, k), DENSITY, VISCOSITY));
  }

  @Property
  void flowIsOddAndNilWithoutADifference(
      @ForAll("laws") FlowLaw law, @ForAll @DoubleRange(min = 0, max = 8e5) double difference) {
    assertEquals(0, law.flow(0));
    assertTrue(-law.flow(difference) == law.flow(-difference));
    assertEquals(law.slope(difference), law.slope(-difference));
    assertTrue(law.flow(difference) >= 0);
  }

  @Property
  void flowNeverFalls(
      @ForAll("laws") FlowLaw law,
      @ForAll @DoubleRange(min = -8e5, max = 8e5) double one,
      @ForAll @DoubleRange(min = -8e5, max = 8e5) double other) {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    double roundOff = 1e-14 * law.flow(8e5);
    assertTrue(law.flow(high) >= law.flow(low) - roundOff);
    assertTrue(law.slope(low) >= 0);
  }

  /** The step is small against the laminar range of the widest pipe, so differences are noisy. */
  @Property(tries = 3000)
  void slopeIsTheDerivative(
      @ForAll("laws") FlowLaw law, @ForAll @DoubleRange(min = -8e5, max = 8e5) double difference) {
    double step = 1e-5 * Math.abs(difference) + 1e-6;
    double slope = Near.derivative(law::flow, difference, step);
    double scale = law.flow(8e5) / 8e5;
    assertEquals(slope, law.slope(difference), 5e-4 * law.slope(difference) + 1e-5 * scale);
  }

  @Property
  void slopeHasNoJumps(
      @ForAll("laws") FlowLaw law, @ForAll @DoubleRange(min = 1, max = 8e5) double difference) {
    double near = law.slope(difference * (1 + 1e-9));
    assertEquals(law.slope(difference), near, 1e-5 * near + 1e-30);
  }
}
