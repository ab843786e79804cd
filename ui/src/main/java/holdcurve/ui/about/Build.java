package holdcurve.ui.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** What the build says of the program, and the machine of itself. */
public final class Build {
  /** The licence of Holdcurve itself. */
  public static final String LICENCE = "Apache-2.0";

  private Build() {}

  /** Such as {@code 0.2.0}: the version in the build files. */
  public static String version() {
    Properties build = new Properties();
    try (InputStream in = Build.class.getResourceAsStream("build.properties")) {
      build.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return build.getProperty("version");
  }

  /** Which Java runs it, on which system. */
  public static String platform() {
    return "Java "
        + System.getProperty("java.version")
        + " ("
        + System.getProperty("java.vendor")
        + "), "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.version")
        + ", "
        + System.getProperty("os.arch");
  }
}
