package holdcurve.bench;

import holdcurve.inference.ranking.InferenceTable;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.physics.ode.HoldProblemTable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** Prints every figure of speed, each the fastest of many repeats in processor time. */
public final class SpeedTable {
  private static final int READINGS = 72_000;

  private SpeedTable() {}

  /** Prints all, and draws the costs. */
  public static void main(String[] arguments) throws IOException {
    HoldProblemTable.print();
    NetworkSize.print();
    InferenceTable.print();
    printLog();
    WholeProgram.print();
    Path root = Path.of(System.getProperty("holdcurve.root", ".."));
    Picture.write(root.resolve("sim-core/src/bench/pictures/costs.svg"));
  }

  private static void printLog() {
    StringBuilder text = new StringBuilder("time_s,pressure_bar\n");
    for (int i = 0; i < READINGS; i++) {
      double t = 0.1 * i;
      text.append(String.format(Locale.ROOT, "%.1f,%.3f%n", t, 2 * Math.exp(-t / 5000)));
    }
    String log = text.toString();
    System.out.printf(
        Locale.ROOT,
        "| reading a log of 72 000 lines | %.0f ms |%n",
        Clock.fastest(() -> GaugeLogReader.read("log.csv", log)) / 1e3);
  }
}
