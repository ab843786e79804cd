package holdcurve.ui.window.holdtests;

import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogImport;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.List;

/** What was understood of a pasted or imported log, before it is taken. */
record Preview(LogImport log) {
  private static final int SHOWN = 6;

  /** How it was understood, in sentences. */
  List<String> understood(PressureFormat pressures) {
    return pressures.texts(log.understood());
  }

  /** A few of its readings as they would be taken, time and pressure. */
  List<String> sample(PressureFormat pressures) {
    List<Reading> readings = log.log().fromPumpStop().readings();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      if (i < SHOWN - 1 || i == readings.size() - 1) {
        lines.add(line(readings.get(i), pressures));
      } else if (i == SHOWN - 1) {
        lines.add("…");
      }
    }
    return lines;
  }

  private static String line(Reading reading, PressureFormat pressures) {
    return Entry.clock(reading.time())
        + "   "
        + pressures.text(reading.pressure())
        + (reading.doubtful() ? "  ?" : "");
  }

  GaugeLog readings() {
    return log.log();
  }
}
