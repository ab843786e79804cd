package holdcurve.side;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.circuit.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * What people see of a leak, and what they see without one, from the data file {@code seeing.json}
 * beside this class, which has the sources.
 *
 * @param seenByHalf leak that every other look finds [m³/s]
 * @param steepness how sharply that share rises with the leak [-]
 * @param overlooked share of looks that miss even a large leak [-]
 * @param spilt share of sound joints that are wet all the same [-]
 * @param dampHose share of sound regulators with fuel in their thin hose [-]
 * @param drop volume of a drop [m³]
 * @param dropSpread likewise, standard deviation of its logarithm [-]
 * @param liftingSpread how much an injector drips otherwise when lifted, likewise [-]
 * @param evaporated flow that dries off before a drop forms [m³/s]
 * @param miscounted share of drop counts that have to do with something else [-]
 * @param oneInjector share of dripping sets in which one injector drips, the others not [-]
 * @param cylinder standard error of a measuring cylinder [m³]
 * @param storageSpread standard error of the model's storage while fuel is drawn off, as a share
 *     [-]
 */
record Seeing(
    double seenByHalf,
    double steepness,
    double overlooked,
    double spilt,
    double dampHose,
    double drop,
    double dropSpread,
    double liftingSpread,
    double evaporated,
    double miscounted,
    double oneInjector,
    double cylinder,
    double storageSpread) {

  /** The shipped data file. */
  static Seeing shipped() {
    try (InputStream in = Seeing.class.getResourceAsStream("seeing.json")) {
      JsonNode root = new ObjectMapper().readTree(in);
      return new Seeing(
          Unit.MILLILITRE_PER_MINUTE.toSi(value(root, "seen_by_half_mL_min")),
          value(root, "seen_steepness"),
          value(root, "overlooked"),
          value(root, "spilt"),
          value(root, "damp_hose"),
          Unit.MILLILITRE.toSi(value(root, "drop_mL")),
          value(root, "drop_spread"),
          value(root, "lifting_spread"),
          Unit.MILLILITRE_PER_MINUTE.toSi(value(root, "evaporated_mL_min")),
          value(root, "miscounted"),
          value(root, "one_injector"),
          Unit.MILLILITRE.toSi(value(root, "cylinder_mL")),
          value(root, "storage_spread"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double value(JsonNode root, String name) {
    return root.get(name).get("value").asDouble();
  }

  /**
   * Probability that a look finds fuel.
   *
   * @param flow leak there [m³/s], zero for none
   * @param without probability that fuel is found where nothing leaks [-]
   */
  double found(double flow, double without) {
    double ratio = Math.pow(Math.max(0, flow) / seenByHalf, steepness);
    double noticed = (1 - overlooked) * ratio / (1 + ratio);
    return 1 - (1 - without) * (1 - noticed);
  }

  /** Variance of a count of drops over the square of its mean, beside chance [-]. */
  double countVariance() {
    return dropSpread * dropSpread + liftingSpread * liftingSpread;
  }

  /**
   * Drops expected.
   *
   * @param flow at all tips together [m³/s]
   * @param tips how many they are [-]
   * @param duration [s]
   */
  double drops(double flow, int tips, double duration) {
    double left = flow <= 0 ? 0 : flow * flow / (flow + tips * evaporated);
    return left * duration / drop;
  }
}
