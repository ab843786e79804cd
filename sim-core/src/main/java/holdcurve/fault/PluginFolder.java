package holdcurve.fault;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;

/**
 * Fault plugins in the jars of a folder, each jar with a class loader of its own whose parent is
 * the program's. Files that don't end in {@code .jar} are passed over.
 */
final class PluginFolder {
  static final String SERVICE_ENTRY = "META-INF/services/" + LeakFault.class.getName();

  private final Path folder;
  private final Duration limit;

  PluginFolder(Path folder, Duration limit) {
    this.folder = folder;
    this.limit = limit;
  }

  void addTo(Admission admission) {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> jars = files.filter(PluginFolder::isNamedJar).sorted().toList();
      jars.forEach(jar -> addJar(jar, admission));
    } catch (IOException e) {
      admission.refuse(
          "The plugin folder " + folder + " can't be read: is it there, and a folder?");
    }
  }

  private static boolean isNamedJar(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".jar");
  }

  private void addJar(Path jar, Admission admission) {
    String name = jar.getFileName().toString();
    try {
      List<String> types = types(jar);
      if (types.isEmpty()) {
        leaveOut(name, "it names no fault in " + SERVICE_ENTRY, admission);
        return;
      }
      // stays open as long as the program: classes are read from it when first used
      URLClassLoader loader =
          new URLClassLoader(
              name, new URL[] {jar.toUri().toURL()}, LeakFault.class.getClassLoader());
      PluginCall call = PluginCall.limited(limit);
      types.forEach(type -> addType(type, name, loader, call, admission));
    } catch (ZipException e) {
      leaveOut(name, "it isn't a jar file", admission);
    } catch (IOException | UncheckedIOException | SecurityException e) {
      leaveOut(name, "it can't be read", admission);
    }
  }

  private static void leaveOut(String jar, String why, Admission admission) {
    admission.refuse("The plugin jar " + jar + " is left out: " + why + ".");
  }

  private static List<String> types(Path jar) throws IOException {
    if (Files.isDirectory(jar)) {
      throw new ZipException("a folder");
    }
    try (JarFile file = new JarFile(jar.toFile())) {
      ZipEntry entry = file.getEntry(SERVICE_ENTRY);
      if (entry == null) {
        return List.of();
      }
      try (BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(file.getInputStream(entry), StandardCharsets.UTF_8))) {
        return lines
            .lines()
            .map(line -> line.replaceAll("#.*", "").strip())
            .filter(line -> !line.isEmpty())
            .distinct()
            .toList();
      }
    }
  }

  private static void addType(
      String type, String jar, ClassLoader loader, PluginCall call, Admission admission) {
    LeakFault fault;
    try {
      fault = call.ask(type, "it was made", () -> make(type, loader));
    } catch (FaultFailure e) {
      admission.refuse("From " + jar + ": " + e.getMessage());
      return;
    }
    admission.admit(fault, jar, call);
  }

  private static LeakFault make(String type, ClassLoader loader) throws Exception {
    Object made;
    try {
      made = Class.forName(type, true, loader).getConstructor().newInstance();
    } catch (InvocationTargetException e) {
      throw e.getCause() instanceof Exception cause ? cause : e;
    }
    if (made instanceof LeakFault fault) {
      return fault;
    }
    throw new ClassCastException("it is no " + LeakFault.class.getSimpleName());
  }
}
