package holdcurve.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A process that writes a file and is halted at one of the steps, without any clearing up. */
final class HaltingWriter {
  static final int HALTED = 9;
  private static final long PATIENCE_S = 60;

  private HaltingWriter() {}

  /**
   * @param arguments file that is written, file that holds the new content, step
   */
  public static void main(String[] arguments) throws IOException {
    BreakingDisk disk =
        new BreakingDisk(
            Integer.parseInt(arguments[2]), true, what -> Runtime.getRuntime().halt(HALTED));
    SafeFile.write(Path.of(arguments[0]), Files.readAllBytes(Path.of(arguments[1])), disk);
  }

  /** Runs it and gives its exit code: {@link #HALTED} as long as there is such a step. */
  static int start(Path file, String content, int step) throws IOException, InterruptedException {
    Path fresh = Files.writeString(Files.createTempFile("content", ".txt"), content);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                HaltingWriter.class.getName(),
                file.toString(),
                fresh.toString(),
                Integer.toString(step))
            .inheritIO()
            .start();
    if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("step " + step + " hangs");
    }
    Files.delete(fresh);
    return process.exitValue();
  }
}
