package holdcurve.training;

import holdcurve.common.input.Require;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.GaugeSpec;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Makes exercises up. The same seed and level give the same one. Stories are drawn without regard
 * to the fault, so that they give nothing away.
 */
public final class RandomExercises {
  private static final List<String> STORIES =
      List.of(
          "Starts at once in the morning, the owner says, but cranks long after an hour at the"
              + " shops.",
          "The fuel side was rebuilt over the winter. Before the first start the owner wants to"
              + " know that it holds.",
          "A strip of carpet under the car smells of petrol now and then. Nobody has found a drip.",
          "Bought as a non-runner. It runs now, but the first start of the day takes the battery to"
              + " its end.",
          "Another garage has changed the pump and it is no better. What it was like before, nobody"
              + " wrote down.",
          "Comes in for its yearly check with a note: look at the fuel pressure, please.");

  /** Share of cars without a fault, by level [-]. */
  private static final double[] SOUND = {0, 0.1, 0.2, 0.2, 0.2};

  /** Share of cars with two faults, by level [-]. */
  private static final double[] TWO = {0, 0, 0, 0.3, 0.6};

  /** How bad a fault is by level, on the standard-normal scale of its prior. */
  private static final double[] BADNESS = {1.0, 0.6, 0.2, 0, -0.4};

  private static final double[] MINUTES = {60, 70, 80, 90, 90};

  private final Circuit circuit;
  private final FaultCatalogue catalogue;

  public RandomExercises(Circuit circuit, FaultCatalogue catalogue) {
    this.circuit = circuit;
    this.catalogue = catalogue.showingInHold();
  }

  /**
   * @param level from 1, easy, to 5, nasty
   */
  public Exercise of(int level, long seed) {
    Require.within(level, 1, 5, "level", "-");
    RandomGenerator random = new Well19937c(seed * 31 + level);
    return new Exercise(
        "Car " + Long.toString(seed, 36) + "-" + level,
        level,
        STORIES.get(random.nextInt(STORIES.size())),
        circuit,
        GaugeSpec.usual(),
        Steps.of(circuit),
        MINUTES[level - 1],
        new Secret(faults(level, random), random.nextInt(1 << 30)));
  }

  private List<HiddenFault> faults(int level, RandomGenerator random) {
    double dice = random.nextDouble();
    int count = dice < SOUND[level - 1] ? 0 : dice > 1 - TWO[level - 1] ? 2 : 1;
    List<HiddenFault> faults = new ArrayList<>();
    while (faults.size() < count) {
      HiddenFault next = fault(level, random);
      if (faults.stream().noneMatch(f -> f.fault().equals(next.fault()))) {
        faults.add(next);
      }
    }
    return faults;
  }

  private HiddenFault fault(int level, RandomGenerator random) {
    while (true) {
      LeakFault fault = catalogue.faults().get(random.nextInt(catalogue.faults().size()));
      List<Site> sites = FaultCatalogue.sites(fault, circuit);
      if (!sites.isEmpty()) {
        double z = BADNESS[level - 1] + 0.3 * random.nextGaussian();
        return new HiddenFault(
            fault.id(),
            sites.get(random.nextInt(sites.size())).id(),
            fault.parameters().get(0).prior().at(z));
      }
    }
  }
}
