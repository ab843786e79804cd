package holdcurve.ui.harduse;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** What a logger writes: a simulated hold of two hours with a leak, and its noise. */
final class BigLog {
  private BigLog() {}

  /**
   * @param every seconds between readings; 0.1 makes 72 001 of them
   */
  static Path write(Path file, Path circuit, double every) throws IOException {
    Path smooth = file.resolveSibling("smooth.csv");
    int code =
        HoldcurveCommand.commandLine(new PrintWriter(System.out), new PrintWriter(System.err))
            .execute(
                "simulate",
                circuit.toString(),
                "--fault=check-valve-seat=0.3",
                "--hold=120",
                "--every=" + every,
                "--log=" + smooth);
    if (code != 0) {
      throw new IllegalStateException("the log was not simulated: " + code);
    }
    Random random = new Random(2);
    try (BufferedReader in = Files.newBufferedReader(smooth);
        BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("time_s,pressure_bar,fuel_temp_C\n");
      for (String line : in.lines().filter(line -> line.matches("\\d.*")).toList()) {
        String[] cells = line.split(",");
        double bar = Double.parseDouble(cells[1]) + 0.004 * random.nextGaussian();
        double celsius = 20 + 0.05 * random.nextGaussian();
        out.write(String.format(Locale.ROOT, "%s,%.4f,%.2f%n", cells[0], bar, celsius));
      }
    }
    return file;
  }
}
