package holdcurve.soak;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Hose;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * A circuit in some condition and a hold test on it, all drawn from one seed.
 *
 * @param faults ids of the faults put in
 * @param times of the readings [s]
 */
record RandomTest(long seed, Hold hold, List<String> faults, double[] times) {
  private static final double COLDEST = -20;
  private static final double HOTTEST = 90;

  static RandomTest of(long seed, FaultCatalogue catalogue) {
    Random random = new Random(seed);
    random.nextInt();
    Circuit circuit = new RandomCircuit(random).next();
    Condition condition = Condition.sound(circuit);
    Set<String> put = new HashSet<>();
    for (int wanted = random.nextInt(3); put.size() < wanted; ) {
      LeakFault fault = catalogue.faults().get(random.nextInt(catalogue.faults().size()));
      List<Site> sites = fault.sites(circuit);
      if (!sites.isEmpty() && put.add(fault.id())) {
        Site site = sites.get(random.nextInt(sites.size()));
        condition = fault.apply(condition, site, sizes(fault, random));
      }
    }
    HoldSetup setup = setup(circuit, random);
    double[] times = times(random);
    return new RandomTest(seed, new Hold(condition, setup), List.copyOf(put), times);
  }

  /** From a ten-thousandth to far beyond what is thought possible. */
  private static double[] sizes(LeakFault fault, Random random) {
    return fault.parameters().stream()
        .map(FaultParameter::prior)
        .mapToDouble(prior -> prior.at(8 * random.nextDouble() - 4))
        .toArray();
  }

  private static HoldSetup setup(Circuit circuit, Random random) {
    double celsius = COLDEST + (HOTTEST - COLDEST) * random.nextDouble();
    double range = Math.min(celsius - COLDEST, Math.min(HOTTEST - celsius, 30));
    Operation operation = Operation.holding().withFuelTemperature(Unit.CELSIUS.toSi(celsius));
    Set<String> clamped = new HashSet<>();
    Hose.clampable(circuit).stream().filter(h -> random.nextBoolean()).forEach(clamped::add);
    return new HoldSetup(
        Unit.BAR.toSi(6.5 * random.nextDouble()),
        600 * random.nextDouble(),
        range * (2 * random.nextDouble() - 1),
        operation,
        clamped,
        60 * random.nextDouble(),
        random.nextBoolean() ? 0 : 1e-16 * Math.exp(6 * random.nextGaussian()),
        random.nextBoolean() ? 0 : Unit.MILLILITRE.toSi(0.5 * random.nextDouble()));
  }

  private static double[] times(Random random) {
    double[] times = new double[2 + random.nextInt(60)];
    double step = Math.pow(10, -1 + 3 * random.nextDouble());
    for (int i = 1; i < times.length; i++) {
      times[i] = times[i - 1] + step * (0.1 + random.nextDouble());
    }
    return times;
  }
}
