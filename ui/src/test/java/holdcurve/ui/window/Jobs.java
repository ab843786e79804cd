package holdcurve.ui.window;

import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import java.net.URISyntaxException;
import java.nio.file.Path;

/** Invented jobs in the test resources. */
public final class Jobs {
  public static final Path TWO_HOLDS = path("two-holds.job.json");
  public static final Path SHORT_HOLD = path("short-hold.job.json");
  public static final Path UNKNOWN_ENTRY = path("unknown-entry.job.json");

  private Jobs() {}

  public static Job twoHolds() {
    return JobReader.read(TWO_HOLDS);
  }

  private static Path path(String name) {
    try {
      return Path.of(Jobs.class.getResource("/window/" + name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
