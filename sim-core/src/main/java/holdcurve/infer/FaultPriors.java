package holdcurve.infer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;

/**
 * How likely things are before any reading, from the data file {@code fault-priors.json} beside
 * this class.
 *
 * @param sound probability that a circuit brought for a hold test has no fault [-]
 * @param pair probability that it has two [-]
 * @param prevalence fault id → how common it is beside others [-]; a fault that isn't listed says
 *     it itself
 */
public record FaultPriors(double sound, double pair, Map<String, Double> prevalence) {
  /** The shipped data file. */
  public static FaultPriors shipped() {
    try (InputStream in = FaultPriors.class.getResourceAsStream("fault-priors.json")) {
      JsonNode root = new ObjectMapper().readTree(in);
      Map<String, Double> prevalence = new HashMap<>();
      root.get("prevalence")
          .fields()
          .forEachRemaining(e -> prevalence.put(e.getKey(), e.getValue().get("weight").asDouble()));
      return new FaultPriors(
          root.get("sound").get("probability").asDouble(),
          root.get("pair").get("probability").asDouble(),
          prevalence);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
