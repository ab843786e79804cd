package holdcurve.ui.window.holdtests;

import holdcurve.log.GaugeLog;
import holdcurve.log.LogImport;
import holdcurve.log.Reading;
import holdcurve.ui.window.job.Pressures;
import java.util.ArrayList;
import java.util.List;

/** What was understood of a pasted or imported log, before it is taken. */
record Preview(LogImport log) {
  private static final int SHOWN = 6;

  /** How it was understood, in sentences. */
  List<String> understood(Pressures pressures) {
    return pressures.texts(log.understood());
  }

  /** A few of its readings as they would be taken, time and pressure. */
  List<String> sample(Pressures pressures) {
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

  private static String line(Reading reading, Pressures pressures) {
    return Entry.clock(reading.time())
        + "   "
        + pressures.text(reading.pressure())
        + (reading.doubtful() ? "  ?" : "");
  }

  GaugeLog readings() {
    return log.log();
  }
}
