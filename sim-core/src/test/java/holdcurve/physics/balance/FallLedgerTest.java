package holdcurve.physics.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.Region;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Falls with one cause, worked out by hand, and falls with all. First principles. */
class FallLedgerTest {
  private static final double START = 1.9e5;
  private static final double SPAN = 300;

  /**
   * Feed pipe 3 m of 6 mm bore (84.82 mL), filter 150 mL, hoses 0.8 and 0.9 m of 7.5 mm (75.10 mL),
   * ring line 90 mL [m³].
   */
  private static final double LIQUID = 399.93e-6;

  /** No air and no damper, so that storage doesn't change with pressure. */
  private static final Circuit STEADY = steady(Circuits.SIX_CYLINDER);

  private static final Circuit TIGHT = Circuits.withoutWeeps(STEADY);

  private static Circuit steady(Circuit circuit) {
    Circuit plain =
        new Circuit(
            circuit.title(),
            circuit.fluid(),
            circuit.parts().stream().filter(part -> part.kind() != Damper.KIND).toList());
    return plain.with("gauge-tee", Gauge.AIR, 0);
  }

  private static Network network(Circuit circuit) {
    return NetworkAssembler.assemble(Condition.sound(circuit), Operation.holding(), Detail.LUMPED);
  }

  private static double capacity(Circuit circuit) {
    Network network = network(circuit);
    return network.capacity(network.layout().node("rail").row(), START);
  }

  private static HoldSetup setup(double soak, double warmth) {
    return new HoldSetup(START, soak, warmth, Operation.holding(), Set.of(), 0, 0, 0);
  }

  private static HoldFall fall(Condition condition, HoldSetup setup) {
    return FallLedger.of(new Hold(condition, setup), 0, SPAN);
  }

  /** dp/dt = −G p/C: p₀ (1 − e^(−G t/C)), and C times that in volume. */
  @OutsideCheck(
      what = "share of a fall by a leak alone",
      source = "closed form",
      value = "fall in 300 s",
      tolerance = 0.01,
      unit = "%")
  @Test
  void aLaminarLeakAloneTakesItAll() {
    Circuit circuit = Circuits.withoutCreep(TIGHT);
    double conductance = 0.2e-6 / 60 / 2e5;
    LeakPath leak = new LeakPath("rail", Circuit.AIR, new LaminarLaw(conductance));
    HoldFall fall = fall(Condition.sound(circuit).with(leak), setup(0, 0));
    double capacity = capacity(circuit);
    double expected = START * (1 - Math.exp(-conductance * SPAN / capacity));
    OutsideChecks.holds(
        "share of a fall by a leak alone", expected, fall.leaks().get(0).pressure());
    assertEquals(capacity * expected, fall.leaks().get(0).volume(), 1e-4 * capacity * expected);
    fall.others().forEach((cause, part) -> assertEquals(0, part.pressure(), 1, cause.title()));
  }

  /** Fuel that cools by ΔT leaves α V ΔT, and the pressure falls by that over C. */
  @OutsideCheck(
      what = "share of a fall by cooling alone",
      source = "closed form",
      value = "fall in 300 s",
      tolerance = 0.01,
      unit = "%")
  @Test
  void coolingAloneTakesWhatTheFuelShrinksBy() {
    Circuit circuit = Circuits.withoutCreep(TIGHT);
    double warmth = 0.5;
    HoldFall fall = fall(Condition.sound(circuit), setup(0, warmth));
    double cooled = warmth * (1 - Math.exp(-SPAN / Region.ENGINE.timeConstant()));
    FallPart part = fall.others().get(Cause.TEMPERATURE);
    double alpha = circuit.fluid().thermalExpansion(Operation.ROOM_TEMPERATURE);
    double shrunk = alpha * LIQUID * cooled;
    OutsideChecks.holds("share of a fall by cooling alone", shrunk, part.volume());
    assertEquals(shrunk / capacity(circuit), part.pressure(), 1e-4 * part.pressure());
    assertEquals(fall.pressure(), part.pressure(), 1);
  }

  /**
   * One Kelvin–Voigt branch c, τ on a storage C, at rest at first: C p + v stays C p₀, so p goes to
   * p₀ C/(C + c) at the rate (C + c)/(C τ).
   */
  @OutsideCheck(
      what = "share of a fall by creep alone",
      source = "closed form",
      value = "fall in 300 s",
      tolerance = 0.02,
      unit = "%")
  @Test
  void creepAloneTakesWhatTheHosesStretchBy() {
    Circuit circuit = TIGHT.map(p -> p.kind() == Hose.KIND ? p.with(Hose.QUICK_CREEP, 0) : p);
    Network network = network(circuit);
    double creep =
        network.layout().creepRows().stream()
            .filter(row -> row.node().equals(network.layout().node("rail")))
            .mapToDouble(row -> row.compliance())
            .sum();
    double time = network.layout().creepRows().get(0).relaxationTime();
    double capacity = capacity(circuit);
    double rate = (capacity + creep) / (capacity * time);
    double expected = START * creep / (capacity + creep) * (1 - Math.exp(-rate * SPAN));
    HoldFall fall = fall(Condition.sound(circuit), setup(0, 0));
    OutsideChecks.holds(
        "share of a fall by creep alone", expected, fall.others().get(Cause.CREEP).pressure());
    assertEquals(
        capacity * expected, fall.others().get(Cause.CREEP).volume(), 2e-4 * capacity * expected);
  }

  static Stream<Set<String>> clampings() {
    return Stream.of(
        Set.of(), Set.of("feed-hose"), Set.of("return-hose"), Set.of("feed-hose", "return-hose"));
  }

  /** The regulator still shutting, two leaks, a warm engine, a clamp that doesn't shut tight. */
  @ParameterizedTest
  @MethodSource("clampings")
  void partsAddUpToTheFall(Set<String> clamped) {
    Condition leaky =
        Condition.sound(Circuits.SIX_CYLINDER)
            .with(new LeakPath("rail", Circuit.AIR, OrificeLaw.throughPoint(3e-9, 2e5, 3e4)))
            .with(new LeakPath("feed-start", "pump-outlet", new LaminarLaw(1e-14)));
    HoldSetup setup = new HoldSetup(2.05e5, 20, 1.5, Operation.holding(), clamped, 6, 1e-15, 5e-8);
    HoldFall fall = FallLedger.of(new Hold(leaky, setup), 2, SPAN);
    double[] shown = new HoldSimulator().readings(leaky, setup, new double[] {2, SPAN});
    assertEquals(shown[0] - shown[1], fall.shown(), 100);
    double read = fall.shown() + 700;
    Map<Cause, FallPart> parts = fall.of(read, List.of(Cause.LEAK, Cause.LEAK));
    assertEquals(read, parts.values().stream().mapToDouble(FallPart::pressure).sum(), 1);
    assertEquals(0, parts.get(Cause.OTHER).pressure(), "every element has a cause");
    assertTrue(parts.get(Cause.LEAK).pressure() > 1e4);
    assertTrue(parts.get(Cause.WEEP).pressure() > 1e2);
    assertEquals(clamped.contains("feed-hose"), parts.get(Cause.CLAMP).pressure() != 0);
    assertTrue(clamped.contains("feed-hose") == (fall.leaks().get(1).volume() < 1e-8));
  }

  @Test
  void volumesAddUpToWhatTheFuelGaveUp() {
    Condition leaky =
        Condition.sound(STEADY)
            .with(new LeakPath("rail", Circuit.AIR, OrificeLaw.throughPoint(3e-9, 2e5, 3e4)));
    Map<Cause, FallPart> parts = fall(leaky, setup(20, 1)).of(0, List.of(Cause.LEAK));
    double volume = parts.values().stream().mapToDouble(FallPart::volume).sum();
    double pressure =
        parts.values().stream().mapToDouble(FallPart::pressure).sum()
            - parts.get(Cause.GAUGE).pressure();
    assertEquals(capacity(STEADY) * pressure, volume, 1e-3 * volume);
  }
}
