package holdcurve.ui.harduse;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * The program as it is packaged, in a folder of its own: its launcher, and its jars made from what
 * was compiled.
 */
final class LaunchedProgram {
  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root"));

  private final Path launcher;

  private LaunchedProgram(Path launcher) {
    this.launcher = launcher;
  }

  /** Whether there is a shell to start the launcher. */
  static boolean isPossible() {
    return Files.isExecutable(Path.of("/bin/sh")) && Files.isExecutable(Path.of("/bin/kill"));
  }

  static LaunchedProgram in(Path home) throws IOException {
    Path lib = Files.createDirectories(home.resolve("lib"));
    int count = 0;
    for (String one : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path entry = Path.of(one);
      Path place = lib.resolve(count++ + ".jar");
      if (!Files.isDirectory(entry)) {
        Files.copy(entry, place);
      } else if (!entry.endsWith("test-classes")) {
        jar(entry, place);
      }
    }
    Path launcher = Files.createDirectories(home.resolve("bin")).resolve("holdcurve");
    Files.copy(ROOT.resolve("ui/src/main/launcher/holdcurve"), launcher);
    return new LaunchedProgram(launcher);
  }

  private static void jar(Path classes, Path place) throws IOException {
    try (OutputStream file = Files.newOutputStream(place);
        JarOutputStream jar = new JarOutputStream(file);
        Stream<Path> all = Files.walk(classes)) {
      jar.setLevel(0);
      all.filter(Files::isRegularFile).forEach(one -> add(one, classes, jar));
    }
  }

  private static void add(Path file, Path classes, JarOutputStream jar) {
    try {
      jar.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
      Files.copy(file, jar);
      jar.closeEntry();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Starts it.
   *
   * @param javaOptions such as {@code -Xmx256m}; may be empty
   * @param said takes all that it prints
   */
  Process start(String javaOptions, Path said, List<String> arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of("/bin/sh", launcher.toString()));
    command.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("JDK_JAVA_OPTIONS", javaOptions);
    return builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
  }
}
