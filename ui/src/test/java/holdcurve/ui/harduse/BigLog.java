package holdcurve.ui.harduse;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** What a logger writes at 10 Hz: a leaking hold with its noise. */
final class BigLog {
  private BigLog() {}

  /** Two hours are 72 000 readings. */
  static Path write(Path file, int readings) throws IOException {
    Random random = new Random(2);
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("time_s,pressure_bar,fuel_temp_C\n");
      for (int i = 0; i < readings; i++) {
        double time = i / 10.0;
        double bar = 0.4 + 1.55 * Math.exp(-time / 1500) + 0.004 * random.nextGaussian();
        double celsius = 20 + 0.05 * random.nextGaussian();
        out.write(String.format(Locale.ROOT, "%.1f,%.4f,%.2f%n", time, bar, celsius));
      }
    }
    return file;
  }
}
