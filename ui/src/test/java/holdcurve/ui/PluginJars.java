package holdcurve.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Compiles and packs fault plugins into a folder, as their authors would. */
public final class PluginJars {
  private static final Path EXAMPLE =
      Path.of(System.getProperty("holdcurve.root"), "plugins", "src", "example");
  private static final String SERVICE_ENTRY = "META-INF/services/holdcurve.fault.LeakFault";

  /** A fault like any other, whose methods the bad ones replace. */
  private static final String SOUND =
      """
      package trial;
      import holdcurve.physics.circuit.*;
      import holdcurve.fault.*;
      import holdcurve.physics.flow.*;
      import java.util.List;
      public class Sound implements LeakFault {
        static final FaultParameter LEAK =
            new FaultParameter("leak at 2 bar", Unit.MILLILITRE_PER_MINUTE,
                new Prior.LogNormal(5e-9, 3), "assumed", true);
        public String id() { return getClass().getSimpleName().toLowerCase(); }
        public String name() { return "A trial"; }
        public String symptoms() { return "None."; }
        public String repair() { return "None."; }
        public List<Site> sites(Circuit c) {
          return List.of(new Site("somewhere", "somewhere", c.parts().get(2).to(), List.of()));
        }
        public List<FaultParameter> parameters() { return List.of(LEAK); }
        public Condition apply(Condition c, Site s, double[] p) {
          return c.with(new LeakPath(s.point(), Circuit.AIR, new LaminarLaw(p[0] / 2e5)));
        }
      }
      """;

  private final Path work;
  private final Path folder;

  /**
   * @param work for class files
   * @param folder that receives the jars
   */
  public PluginJars(Path work, Path folder) {
    this.work = work;
    this.folder = folder;
  }

  /** The example that plugin authors start from: one file and its service entry. */
  public void example() throws IOException {
    Path classes = Files.createDirectories(work.resolve("example"));
    compile(classes, List.of(EXAMPLE.resolve("java/example/PorousHose.java")), List.of());
    try (JarOutputStream out = jar("porous-hose")) {
      addAll(classes, out);
      addAll(EXAMPLE.resolve("resources"), out);
    }
  }

  /**
   * A jar for each class, which differs from a sound fault by its members.
   *
   * @param members class name to what replaces the sound methods
   */
  public void trials(Map<String, String> members) throws IOException {
    Path classes = Files.createDirectories(work.resolve("trials"));
    List<JavaFileObject> texts = new ArrayList<>(List.of(text("Sound", SOUND)));
    members.forEach((name, text) -> texts.add(text(name, extension(name, text))));
    compile(classes, List.of(), texts);
    for (String name : members.keySet()) {
      try (JarOutputStream out = jar(name)) {
        addAll(classes, out);
        put(out, SERVICE_ENTRY, ("trial." + name).getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private static String extension(String name, String members) {
    return "package trial;\nimport holdcurve.physics.circuit.*;\nimport holdcurve.fault.*;\n"
        + "import java.util.List;\npublic class "
        + name
        + " extends Sound {\n"
        + members
        + "\n}\n";
  }

  private static void compile(Path to, List<Path> files, List<JavaFileObject> texts)
      throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    List<String> options =
        List.of("-d", to.toString(), "-cp", System.getProperty("java.class.path"));
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      List<JavaFileObject> all = new ArrayList<>(texts);
      manager.getJavaFileObjectsFromPaths(files).forEach(all::add);
      assertTrue(
          compiler.getTask(messages, manager, null, options, null, all).call(), messages::toString);
    }
  }

  private static JavaFileObject text(String name, String source) {
    URI uri = URI.create("string:///trial/" + name + ".java");
    return new SimpleJavaFileObject(uri, JavaFileObject.Kind.SOURCE) {
      @Override
      public CharSequence getCharContent(boolean ignoreErrors) {
        return source;
      }
    };
  }

  private JarOutputStream jar(String name) throws IOException {
    return new JarOutputStream(
        Files.newOutputStream(Files.createDirectories(folder).resolve(name + ".jar")));
  }

  private static void addAll(Path root, JarOutputStream out) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> put(out, root.relativize(file).toString().replace('\\', '/'), file));
    }
  }

  private static void put(JarOutputStream out, String name, Path file) {
    try {
      put(out, name, Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void put(JarOutputStream out, String name, byte[] content) throws IOException {
    out.putNextEntry(new JarEntry(name));
    out.write(content);
  }
}
