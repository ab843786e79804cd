package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.log.GaugeLog;
import java.util.Collection;

/** Writes a simulated hold as JSON. */
public final class SimulationWriter {
  /** Format and version that such files carry. */
  public static final String FORMAT = "holdcurve-simulation/1";

  private SimulationWriter() {}

  /**
   * What the gauge shows, as JSON text of format {@value #FORMAT}.
   *
   * @param circuit its title
   * @param faults that were put in, as they were named
   * @param clamped hoses
   */
  public static String json(
      String circuit, Collection<String> faults, Collection<String> clamped, GaugeLog log) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    root.put("circuit", circuit);
    faults.forEach(root.putArray("faults")::add);
    clamped.forEach(root.putArray("clamped")::add);
    ArrayNode readings = root.putArray("readings");
    log.readings()
        .forEach(
            reading ->
                readings
                    .addObject()
                    .put("time_s", JsonNumbers.stated(reading.time()))
                    .put("pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(reading.pressure()))));
    return JsonFiles.print(root);
  }
}
