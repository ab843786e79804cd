package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What is done fast against its plain twin. */
class NetworkTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final Condition LEAKY =
      Condition.sound(CIRCUIT)
          .with(new LeakPath("rail", Circuit.AIR, OrificeLaw.throughPoint(5e-9, 2e5, 3e4)))
          .with(new LeakPath("feed-start", "tank", LaminarLaw.throughPoint(3e-9, 2e5)));
  private static final Operation HELD =
      Operation.holding().withClamps(Set.of("feed-hose", "return-hose"), 1e-15);

  private static double[] drawn(Network network, long seed) {
    Random random = new Random(seed);
    double[] y = network.stateAt(point -> 5e4 + 2e5 * random.nextDouble(), 20, 1);
    for (NetworkLayout.CreepRow creep : network.layout().creepRows()) {
      y[creep.row()] *= 0.5 + random.nextDouble();
    }
    return y;
  }

  private static double[] plainRates(Network network, double[] y) {
    double[] rates = new double[y.length];
    network.elements().forEach(element -> element.addRates(0, y, rates));
    for (int i = 0; i < network.layout().nodes().size(); i++) {
      rates[i] /= network.capacity(i, y[i]);
    }
    return rates;
  }

  private static double[] rates(Network network, double[] y) {
    double[] rates = new double[y.length];
    network.computeDerivatives(0, y, rates);
    return rates;
  }

  private static void assertClose(double[] expected, double[] actual, double share) {
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], share * Math.abs(expected[i]) + 1e-18, "row " + i);
    }
  }

  @Property(tries = 50)
  void linearElementsAddTheSameInOneMatrix(@ForAll long seed) {
    for (Detail detail : Detail.values()) {
      Network network = NetworkAssembler.assemble(LEAKY, HELD, detail);
      double[] y = drawn(network, seed);
      assertClose(plainRates(network, y), rates(network, y), 1e-9);
    }
  }

  @Property(tries = 20)
  void rememberedPlacesGiveTheSameNetwork(@ForAll long seed) {
    NetworkAssembler repeated = new NetworkAssembler(Detail.LUMPED);
    Condition stiff = LEAKY.with("feed-hose", Hose.COMPLIANCE, 1e-15);
    for (Condition condition : List.of(LEAKY, stiff, LEAKY)) {
      for (Operation operation : List.of(HELD, Operation.holding(), Operation.priming(), HELD)) {
        Network plain = NetworkAssembler.assemble(condition, operation, Detail.LUMPED);
        Network network = repeated.assemble(condition, operation);
        double[] y = drawn(plain, seed);
        assertArrayEquals(rates(plain, y), rates(network, y));
        assertEquals(plain.layout().places().keySet(), network.layout().places().keySet());
      }
    }
  }

  /** The step is small enough for a difference to be a derivative to about its own size. */
  @Test
  void parameterDerivativesAreDifferencesOfWholeNetworks() {
    double step = 1e-4;
    List<Condition> moved =
        List.of(
            LEAKY,
            LEAKY.with("gauge-tee", Gauge.AIR, 1.02e-6),
            LEAKY.with("check-valve", CheckValve.WEEP, 3e-10),
            LEAKY.with("regulator", Regulator.SET, 2.01e5),
            LEAKY.with("feed-hose", Hose.COMPLIANCE, 4e-12),
            LEAKY.with(new LeakPath("rail", Circuit.AIR, LaminarLaw.throughPoint(1e-9, 2e5))));
    Network base = NetworkAssembler.assemble(LEAKY, HELD, Detail.LUMPED);
    List<Network> networks =
        moved.stream().map(c -> NetworkAssembler.assemble(c, HELD, Detail.LUMPED)).toList();
    List<NetworkVariant> variants =
        networks.stream().map(network -> NetworkVariant.of(base, network)).toList();
    VariedNetwork varied = new VariedNetwork(base, variants, step);
    double[] y = drawn(base, 7);
    double[] derivatives = new double[y.length * 8];
    varied.computeParameterDerivatives(0, y, derivatives, 8);
    for (int k = 0; k < networks.size(); k++) {
      double[] from = rates(base, y);
      double[] to = rates(networks.get(k), y);
      for (int i = 0; i < y.length; i++) {
        double expected = (to[i] - from[i]) / step;
        double rounding = 1e-10 * Math.abs(from[i]) / step;
        assertEquals(expected, derivatives[i * 8 + k], 1e-9 * Math.abs(expected) + rounding);
      }
    }
  }
}
