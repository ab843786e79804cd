import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Makes an app of the packaged program for the system that this runs on: a folder with a Java of
 * its own, a zip of it, and where asked an installer. The build runs this file as it is.
 */
final class AppImage {
  private static final String WINDOW = "holdcurve-window";
  private static final String COMMANDS = "holdcurve";
  private static final String IMAGE = "app-image";

  /** What jdeps finds, and the encodings of terminals and old files. */
  private static final String MODULES =
      "java.base,java.desktop,java.logging,java.sql,jdk.charsets,jdk.jfr,jdk.unsupported";

  private static final boolean MAC = system().equals("macos");
  private static final boolean WINDOWS = system().equals("windows");

  private final Path program;
  private final Path packaging;
  private final Path out;
  private final String version;
  private final FileTime time;

  private AppImage(Path program, Path packaging, Path out, String version, FileTime time) {
    this.program = program;
    this.packaging = packaging;
    this.out = out;
    this.version = version;
    this.time = time;
  }

  /**
   * Begins.
   *
   * @param arguments folder of the packaged program, folder of this file, folder for the app,
   *     version, time for all files, kind of package
   */
  public static void main(String[] arguments) throws Exception {
    AppImage app =
        new AppImage(
            Path.of(arguments[0]),
            Path.of(arguments[1]),
            Path.of(arguments[2]),
            arguments[3],
            FileTime.from(Instant.parse(arguments[4])));
    delete(app.out);
    Path image = app.image();
    Path zip = app.zip(image);
    if (!arguments[5].equals(IMAGE)) {
      app.installer(image, arguments[5]);
    }
    System.out.printf(
        Locale.ROOT,
        "app %.1f MB, of it Java %.1f and libraries %.1f; zip %.1f MB%n",
        megabytes(image),
        megabytes(runtime(image)),
        megabytes(app.program.resolve("lib")),
        megabytes(zip));
  }

  private static String system() {
    String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    return name.startsWith("windows") ? "windows" : name.startsWith("mac") ? "macos" : "linux";
  }

  private Path image() throws Exception {
    Path work = Files.createDirectories(out.resolve("work"));
    Path icon = icon(work);
    Path commands =
        Files.writeString(
            work.resolve("commands.properties"),
            "main-class=holdcurve.ui.Main\nwin-console=true\njava-options="
                + options("\\*").replace("\\", "\\\\")
                + "\n");
    String jar = "ui-" + version + ".jar";
    List<String> words = new ArrayList<>(List.of("--type", IMAGE, "--name", WINDOW));
    words.addAll(List.of("--dest", work.toString(), "--icon", icon.toString()));
    words.addAll(List.of("--app-version", appVersion(), "--vendor", "Holdcurve"));
    words.addAll(List.of("--description", "Finds leaks in pressurised petrol injection"));
    words.addAll(List.of("--input", program.resolve("lib").toString(), "--main-jar", jar));
    words.addAll(List.of("--main-class", "holdcurve.ui.WindowMain"));
    words.addAll(List.of("--java-options", options("window")));
    words.addAll(List.of("--add-launcher", COMMANDS + "=" + commands));
    words.addAll(List.of("--add-modules", MODULES));
    // commands stay until the class-data archive is made
    words.addAll(
        List.of(
            "--jlink-options",
            "--strip-java-debug-attributes --no-man-pages --no-header-files"));
    jpackage(words);
    String suffix = MAC ? ".app" : "";
    Path image = out.resolve(MAC ? WINDOW + suffix : "holdcurve-" + version);
    Files.move(work.resolve(WINDOW + suffix), image);
    addFiles(image);
    archiveClasses(image);
    delete(work);
    try (Stream<Path> all = Files.walk(image)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.setLastModifiedTime(one, time);
      }
    }
    return image;
  }

  /** Of the launcher script: one place says how the Java machine is tuned for either. */
  private String options(String which) throws IOException {
    String script = Files.readString(program.resolve("bin/holdcurve"));
    Matcher tuning = Pattern.compile(which + "\\) tuning=\"([^\"]*)\"").matcher(script);
    if (!tuning.find()) {
      throw new IllegalStateException("bin/holdcurve says no tuning for " + which);
    }
    return tuning.group(1) + " -Dholdcurve.home=" + (MAC ? "$APPDIR" : "$ROOTDIR");
  }

  /** macOS takes no version whose first number is 0. */
  private String appVersion() {
    String plain = version.replaceAll("-.*", "");
    return MAC && plain.startsWith("0.") ? "1" + plain.substring(1) : plain;
  }

  private static void jpackage(List<String> words) {
    ToolProvider tool =
        ToolProvider.findFirst("jpackage")
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "This Java has no jpackage: an app is made with a full JDK, 17 or later."));
    int code = tool.run(System.out, System.err, words.toArray(String[]::new));
    if (code != 0) {
      throw new IllegalStateException("jpackage ended with " + code + ": " + words);
    }
  }

  /** What lies beside the libraries: scenarios, licence, help. The scripts are replaced. */
  private void addFiles(Path image) throws IOException {
    Path place = MAC ? image.resolve("Contents/app") : image;
    try (Stream<Path> all = Files.walk(program)) {
      for (Path one : all.filter(Files::isRegularFile).toList()) {
        Path name = program.relativize(one);
        if (!name.startsWith("lib") && !name.startsWith("bin")) {
          Path target = place.resolve(name.toString());
          Files.createDirectories(target.getParent());
          Files.copy(one, target, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  /**
   * An archive of the classes of Java that a ranking and a report load. Those of our own are not in
   * it: Java 17 takes them only from the very folder that they were archived in.
   */
  private void archiveClasses(Path image) throws Exception {
    Path runtime = runtime(image);
    Path java = runtime.resolve("bin").resolve(WINDOWS ? "java.exe" : "java");
    Path scenario = program.resolve("scenarios/check-valve.job.json");
    Path work = out.resolve("work");
    Path seen = work.resolve("seen.txt");
    run(
        java.toString(),
        "-XX:DumpLoadedClassList=" + seen,
        "-cp",
        program.resolve("lib") + "/*",
        "holdcurve.ui.Main",
        "report",
        scenario.toString(),
        "--out",
        work.toString());
    Set<String> classes = new TreeSet<>();
    for (Path list : List.of(runtime.resolve("lib/classlist"), seen)) {
      try (Stream<String> lines = Files.lines(list)) {
        lines.filter(line -> line.matches("(java|javax|jdk|sun)/.*")).forEach(classes::add);
      }
    }
    Path merged = Files.write(work.resolve("classes.txt"), classes);
    run(java.toString(), "-Xshare:dump", "-XX:SharedClassListFile=" + merged);
    if (!WINDOWS) {
      delete(runtime.resolve("bin"));
    }
  }

  /** Quiet unless it fails. */
  private void run(String... words) throws Exception {
    Path said = out.resolve("work/said.txt");
    Process process =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    if (process.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", words) + ":\n" + Files.readString(said));
    }
  }

  private static Path runtime(Path image) {
    return image.resolve(
        MAC ? "Contents/runtime/Contents/Home" : WINDOWS ? "runtime" : "lib/runtime");
  }

  private Path zip(Path image) throws IOException {
    String arch = System.getProperty("os.arch").equals("aarch64") ? "aarch64" : "x64";
    Path zip = out.resolve("holdcurve-" + version + "-" + system() + "-" + arch + ".zip");
    Map<String, ?> how = Map.of("create", "true", "enablePosixFileAttributes", "true");
    try (FileSystem inside = FileSystems.newFileSystem(zip, how);
        Stream<Path> all = Files.walk(image)) {
      for (Path one : all.sorted().toList()) {
        Path target = inside.getPath(image.getParent().relativize(one).toString().replace('\\', '/'));
        if (Files.isDirectory(one)) {
          Files.createDirectories(target);
        } else {
          Files.copy(one, target);
        }
        Files.setLastModifiedTime(target, time);
        boolean runs = Files.isDirectory(one) || Files.isExecutable(one);
        Files.setPosixFilePermissions(target, permissions(runs));
      }
    }
    return zip;
  }

  private static Set<PosixFilePermission> permissions(boolean runs) {
    Set<PosixFilePermission> all = EnumSet.allOf(PosixFilePermission.class);
    all.remove(PosixFilePermission.GROUP_WRITE);
    all.remove(PosixFilePermission.OTHERS_WRITE);
    if (!runs) {
      all.remove(PosixFilePermission.OWNER_EXECUTE);
      all.remove(PosixFilePermission.GROUP_EXECUTE);
      all.remove(PosixFilePermission.OTHERS_EXECUTE);
    }
    return all;
  }

  /** Only an installer can tell a system which files the window opens. */
  private void installer(Path image, String type) {
    List<String> words = new ArrayList<>(List.of("--type", type, "--name", WINDOW));
    words.addAll(List.of("--app-image", image.toString(), "--dest", out.toString()));
    words.addAll(List.of("--app-version", appVersion(), "--vendor", "Holdcurve"));
    words.addAll(List.of("--license-file", program.resolve("LICENSE").toString()));
    words.addAll(List.of("--file-associations", packaging.resolve("job.properties").toString()));
    words.addAll(
        List.of("--file-associations", packaging.resolve("circuit.properties").toString()));
    if (system().equals("linux")) {
      words.addAll(List.of("--linux-shortcut", "--linux-menu-group", "Science"));
    } else if (WINDOWS) {
      words.addAll(List.of("--win-menu", "--win-per-user-install"));
    }
    jpackage(words);
  }

  /** The drawing in the form that the system wants. */
  private Path icon(Path work) throws IOException {
    Path drawing = packaging.resolve("../main/resources/holdcurve/ui/theme/icon.png").normalize();
    if (WINDOWS) {
      return Files.write(work.resolve("icon.ico"), ico(drawing));
    }
    return MAC ? Files.write(work.resolve("icon.icns"), icns(drawing)) : drawing;
  }

  private static byte[] ico(Path drawing) throws IOException {
    int[] sizes = {16, 32, 48, 256};
    List<byte[]> pictures = new ArrayList<>();
    for (int size : sizes) {
      pictures.add(scaled(drawing, size));
    }
    int offset = 6 + 16 * sizes.length;
    int total = offset + pictures.stream().mapToInt(one -> one.length).sum();
    ByteBuffer ico = ByteBuffer.allocate(total).order(ByteOrder.LITTLE_ENDIAN);
    ico.putShort((short) 0).putShort((short) 1).putShort((short) sizes.length);
    for (int i = 0; i < sizes.length; i++) {
      // a side of 256 is written as 0
      ico.put((byte) sizes[i]).put((byte) sizes[i]).putShort((short) 0);
      ico.putShort((short) 1).putShort((short) 32).putInt(pictures.get(i).length).putInt(offset);
      offset += pictures.get(i).length;
    }
    pictures.forEach(ico::put);
    return ico.array();
  }

  private static byte[] icns(Path drawing) throws IOException {
    byte[] small = scaled(drawing, 128);
    byte[] large = scaled(drawing, 256);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream icns = new DataOutputStream(bytes);
    icns.writeBytes("icns");
    icns.writeInt(8 + 8 + small.length + 8 + large.length);
    icns.writeBytes("ic07");
    icns.writeInt(8 + small.length);
    icns.write(small);
    icns.writeBytes("ic08");
    icns.writeInt(8 + large.length);
    icns.write(large);
    return bytes.toByteArray();
  }

  private static byte[] scaled(Path drawing, int size) throws IOException {
    BufferedImage from = ImageIO.read(drawing.toFile());
    BufferedImage to = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = to.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(from, 0, 0, size, size, null);
    pen.dispose();
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(to, "png", png);
    return png.toByteArray();
  }

  private static double megabytes(Path place) throws IOException {
    try (Stream<Path> all = Files.walk(place)) {
      return all.filter(Files::isRegularFile).mapToLong(one -> one.toFile().length()).sum() / 1e6;
    }
  }

  private static void delete(Path place) throws IOException {
    if (Files.exists(place)) {
      try (Stream<Path> all = Files.walk(place)) {
        for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(one);
        }
      }
    }
  }
}
