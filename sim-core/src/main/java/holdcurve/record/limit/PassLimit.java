package holdcurve.record.limit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.common.input.Require;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Regulator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The least pressure that a hold without clamps must still show some time after the pump stopped.
 *
 * @param pressure least reading [Pa gauge]
 * @param time after the pump stop at which it is read [s]
 */
public record PassLimit(double pressure, double time) {
  private static final JsonNode USUAL = shipped();

  public PassLimit {
    Require.positive(pressure, "least pressure", "Pa");
    Require.positive(time, "time of the pass limit", "s");
  }

  /**
   * The limit for a circuit about which its job says nothing, from the data file {@code
   * pass-limit.json} beside this class, which names its source.
   *
   * @param setPressure of the regulator [Pa gauge]
   */
  public static PassLimit usual(double setPressure) {
    return new PassLimit(
        USUAL.at("/least_percent_of_set_pressure").asDouble() / 100 * setPressure,
        60 * USUAL.at("/after_min").asDouble());
  }

  private static JsonNode shipped() {
    try (InputStream in = PassLimit.class.getResourceAsStream("pass-limit.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Likewise, with the set pressure of the first regulator of {@code circuit}. */
  public static PassLimit usual(Circuit circuit) {
    return usual(circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET));
  }
}
