package holdcurve.inference.finding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.physics.circuit.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.commons.math3.special.Gamma;

/**
 * What people see of a leak, and what they see without one, from the data file {@code
 * detection.json} beside this class, which has the sources.
 *
 * @param seenByHalf leak that every other look finds [m³/s]
 * @param seenAgainByHalf likewise at a joint that was wiped dry before [m³/s]
 * @param steepness how sharply that share rises with the leak [-]
 * @param overlooked share of looks that miss even a large leak [-]
 * @param spilt share of sound joints that are wet all the same [-]
 * @param wetAgain share of sound joints that are wet again after they were wiped dry [-]
 * @param ranAlong share of sound joints that are wet with fuel from a leak in the same stretch [-]
 * @param fuelInHose share of sound regulators with fuel in their thin hose [-]
 * @param drop volume of a drop [m³]
 * @param dropSpread likewise, standard deviation of its logarithm [-]
 * @param liftingSpread how much an injector drips otherwise when lifted, likewise [-]
 * @param evaporated flow that dries off before a drop forms [m³/s]
 * @param miscounted share of drop counts that have to do with something else [-]
 * @param leftOver mean of such a count [-]
 * @param untight weep of the least tight of sound seats, over the usual [-]
 * @param liftedOtherwise share of leaking injectors that drip, once lifted, at any rate at all [-]
 * @param oneInjector share of dripping sets in which one injector drips, the others not [-]
 * @param staysOpen share of drop tests, watched after the firings, that show an injector of a
 *     leaking set not to shut [-]
 * @param seemsOpen share that do so where no injector leaks [-]
 * @param cylinder standard error of a measuring cylinder [m³]
 * @param storageSpread standard error of the model's storage while fuel is drawn off, as a share
 *     [-]
 */
record DetectionModel(
    double seenByHalf,
    double seenAgainByHalf,
    double steepness,
    double overlooked,
    double spilt,
    double wetAgain,
    double ranAlong,
    double fuelInHose,
    double drop,
    double dropSpread,
    double liftingSpread,
    double evaporated,
    double miscounted,
    double leftOver,
    double untight,
    double liftedOtherwise,
    double oneInjector,
    double staysOpen,
    double seemsOpen,
    double cylinder,
    double storageSpread) {

  /** A count that sound seats give less than once in a thousand times is a drip [-]. */
  private static final double CLEARLY = 0.999;

  /** The shipped data file. */
  static DetectionModel shipped() {
    try (InputStream in = DetectionModel.class.getResourceAsStream("seeing.json")) {
      JsonNode root = new ObjectMapper().readTree(in);
      return new DetectionModel(
          Unit.MILLILITRE_PER_MINUTE.toSi(value(root, "seen_by_half_mL_min")),
          Unit.MILLILITRE_PER_MINUTE.toSi(value(root, "seen_again_by_half_mL_min")),
          value(root, "seen_steepness"),
          value(root, "overlooked"),
          value(root, "spilt"),
          value(root, "wet_again"),
          value(root, "ran_along"),
          value(root, "fuel_in_hose"),
          Unit.MILLILITRE.toSi(value(root, "drop_mL")),
          value(root, "drop_spread"),
          value(root, "lifting_spread"),
          Unit.MILLILITRE_PER_MINUTE.toSi(value(root, "evaporated_mL_min")),
          value(root, "miscounted"),
          value(root, "left_over"),
          value(root, "untight"),
          value(root, "lifted_otherwise"),
          value(root, "one_injector"),
          value(root, "stays_open"),
          value(root, "seems_open"),
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
   * Probability that a look at a joint finds fuel.
   *
   * @param flow leak there [m³/s], zero for none
   * @param near leaks in the same stretch, that one included [m³/s]
   * @param wiped whether it was wiped dry before the look
   */
  double foundAtJoint(double flow, double near, boolean wiped) {
    double half = wiped ? seenAgainByHalf : seenByHalf;
    double without = (wiped ? wetAgain : spilt) + ranAlong * noticed(near, half);
    return 1 - (1 - without) * (1 - noticed(flow, half));
  }

  /**
   * Probability that a look into the regulator's thin hose finds fuel.
   *
   * @param flow leak into it [m³/s], zero for none
   */
  double foundInHose(double flow) {
    return 1 - (1 - fuelInHose) * (1 - noticed(flow, seenByHalf));
  }

  private double noticed(double flow, double half) {
    double ratio = Math.pow(Math.max(0, flow) / half, steepness);
    return (1 - overlooked) * ratio / (1 + ratio);
  }

  /** Variance of a count of drops over the square of its mean, beside chance [-]. */
  double countVariance() {
    return dropSpread * dropSpread + liftingSpread * liftingSpread;
  }

  /** Probability of a count, negative binomial: chance about an uncertain mean. */
  double count(int drops, double mean) {
    double shape = 1 / countVariance();
    return Math.exp(
        Gamma.logGamma(drops + shape)
            - Gamma.logGamma(shape)
            - Gamma.logGamma(drops + 1.0)
            + shape * Math.log(shape / (shape + mean))
            + (drops == 0 ? 0 : drops * Math.log(mean / (shape + mean))));
  }

  /** Whether a count is higher than chance about a mean can make it. */
  boolean isMore(int drops, double mean) {
    double fewer = 0;
    for (int n = 0; n < drops && fewer < CLEARLY; n++) {
      fewer += mean > 0 ? count(n, mean) : 1;
    }
    return fewer >= CLEARLY;
  }

  /**
   * Share of counts that lifting has parted from the rate before: none without a leak.
   *
   * @param leaking flow of the leak [m³/s]
   * @param tips at how many tips [-]
   */
  double unsettled(double leaking, int tips) {
    return leaking <= 0 ? 0 : liftedOtherwise * leaking / (leaking + tips * evaporated);
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
