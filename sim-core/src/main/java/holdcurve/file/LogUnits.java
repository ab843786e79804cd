package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.common.message.PressureUnit;
import holdcurve.record.log.GaugeLogReader;
import java.nio.file.Path;
import java.util.Optional;

/** In which unit somebody reads pressures, as far as their logs tell. */
public final class LogUnits {
  private LogUnits() {}

  /** The unit that the heading of a log names; empty where it names none. */
  public static Optional<PressureUnit> ofLog(Path file) {
    return GaugeLogReader.readUnfinished(file).unit();
  }

  /** The unit of the last log of a job whose heading names one. */
  public static Optional<PressureUnit> ofJob(Path file) {
    JsonPlace root = JsonFiles.read(file, "holdcurve-job", 1);
    Optional<PressureUnit> last = Optional.empty();
    for (JsonNode test : root.node().path("tests")) {
      if (test.path("log").isTextual()) {
        Optional<PressureUnit> unit = ofLog(file.resolveSibling(test.path("log").textValue()));
        last = unit.isPresent() ? unit : last;
      }
    }
    return last;
  }
}
