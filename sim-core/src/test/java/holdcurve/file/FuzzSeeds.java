package holdcurve.file;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The shipped scenarios and the corpus, copied to where damaged copies can stand beside them. */
final class FuzzSeeds {
  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root")).normalize();

  /**
   * A file that is damaged.
   *
   * @param kind folder of the corpus, which names the reader
   * @param file its copy
   */
  record Seed(String kind, Path file, String text) {
    /** Writes a damaged copy where the files that it names are found. */
    Path damaged(String text) throws IOException {
      Path damaged = file.resolveSibling("damaged-" + file.getFileName());
      return Files.writeString(damaged, text.replaceAll("[\\ud800-\\udfff]", "?"));
    }

    @Override
    public String toString() {
      return kind + " " + file.getFileName();
    }
  }

  private final Map<String, List<Seed>> seeds = new TreeMap<>();
  private final Map<String, List<Seed>> sound = new TreeMap<>();

  private FuzzSeeds() {}

  static FuzzSeeds copied() {
    FuzzSeeds seeds = new FuzzSeeds();
    try {
      Path copy = Files.createDirectories(Path.of("target", "fuzz"));
      seeds.add(ROOT.resolve("scenarios"), copy.resolve("scenarios"));
      seeds.add(HardFiles.FOLDER, copy.resolve("hard"));
      // Found once: a test asks for them at each try.
      seeds.seeds.forEach(
          (kind, all) -> seeds.sound.put(kind, all.stream().filter(FuzzSeeds::isSound).toList()));
      return seeds;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<String> kinds() {
    return List.copyOf(seeds.keySet());
  }

  List<Seed> of(String kind) {
    return seeds.get(kind);
  }

  /** Those that are read as they are. */
  List<Seed> sound(String kind) {
    return sound.get(kind);
  }

  private static boolean isSound(Seed seed) {
    try {
      HardFiles.read(seed.kind, seed.file);
      return true;
    } catch (InputException refused) {
      return false;
    }
  }

  private void add(Path from, Path to) throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(from)) {
      all.filter(Files::isRegularFile).sorted().forEach(files::add);
    }
    for (Path file : files) {
      Path copy = to.resolve(from.relativize(file));
      Files.createDirectories(copy.getParent());
      Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
      String kind = kind(file);
      if (!kind.isEmpty()) {
        addText(new Seed(kind, copy, ""));
      }
    }
  }

  private void addText(Seed seed) throws IOException {
    try {
      String text = Files.readString(seed.file);
      seeds
          .computeIfAbsent(seed.kind, kind -> new ArrayList<>())
          .add(new Seed(seed.kind, seed.file, text));
    } catch (MalformedInputException e) {
      return;
    }
  }

  private static String kind(Path file) {
    String name = file.getFileName().toString();
    String folder = file.getParent().getFileName().toString();
    if (name.endsWith(".circuit.json")) {
      return "circuit";
    }
    if (name.endsWith(".job.json")) {
      return "job";
    }
    if (name.endsWith(".exercise.json")) {
      return "exercise";
    }
    if (name.startsWith("drops-") || folder.equals("drops")) {
      return "drops";
    }
    if (folder.equals("bench") || name.startsWith("prices") || folder.equals("prices")) {
      return folder.equals("bench") ? "bench" : "prices";
    }
    return name.endsWith(".csv") ? "log" : "";
  }
}
