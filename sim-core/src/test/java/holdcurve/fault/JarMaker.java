package holdcurve.fault;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Compiles a fault plugin from source text and packs it, as its author would. */
final class JarMaker {
  private final Path work;
  private final Path folder;

  /**
   * @param work for class files
   * @param folder that receives the jars
   */
  JarMaker(Path work, Path folder) {
    this.work = work;
    this.folder = folder;
  }

  /**
   * A jar with one fault class {@code trial.<name>}.
   *
   * @param id returned by {@code id()}
   * @param members methods that replace the sound ones, by their declarations
   */
  Path fault(String name, String id, String members) throws IOException {
    return jar(name, source(name, id, members), "trial." + name + "\n");
  }

  Path jar(String name, String source, String service) throws IOException {
    Path classes = Files.createDirectory(work.resolve(name));
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<String> options =
        List.of("-d", classes.toString(), "-cp", System.getProperty("java.class.path"));
    assertTrue(
        compiler.getTask(null, null, null, options, null, List.of(text(name, source))).call());
    Path jar = folder.resolve(name + ".jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        out.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, out);
      }
      if (!service.isEmpty()) {
        out.putNextEntry(new JarEntry(PluginFolder.SERVICE_ENTRY));
        out.write(service.getBytes(java.nio.charset.StandardCharsets.UTF_8));
      }
    }
    return jar;
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

  /** A sound little fault, but for what {@code members} replaces. */
  private static String source(String name, String id, String members) {
    StringBuilder text = new StringBuilder(HEAD.formatted(name));
    for (String[] method :
        new String[][] {
          {"String id()", "return \"" + id + "\";"},
          {"String name()", "return \"A trial\";"},
          {"String symptoms()", "return \"None.\";"},
          {"String repair()", "return \"None.\";"},
          {"List<Site> sites(Circuit c)", "return List.of(Faults.site(c));"},
          {"List<FaultParameter> parameters()", "return List.of(Faults.LEAK);"},
          {
            "Condition apply(Condition c, Site s, double[] p)",
            "return c.with(new LeakPath(s.point(), Circuit.AIR, new LaminarLaw(p[0] / 2e5)));"
          }
        }) {
      if (!members.contains(method[0])) {
        text.append("public ").append(method[0]).append(" { ").append(method[1]).append(" }\n");
      }
    }
    return text.append(members).append(TAIL).toString();
  }

  private static final String HEAD =
      """
      package trial;
      import holdcurve.physics.circuit.*;
      import holdcurve.fault.*;
      import holdcurve.physics.flow.*;
      import java.util.List;
      public class %s implements LeakFault {
      """;

  private static final String TAIL =
      """
      }
      class Faults {
        static final FaultParameter LEAK =
            new FaultParameter(
                "leak at 2 bar", Unit.MILLILITRE_PER_MINUTE, new Prior.LogNormal(5e-9, 3), "assumed", true);
        static Site site(Circuit c) {
          return new Site("somewhere", "somewhere", c.parts().get(1).to(), List.of());
        }
      }
      """;
}
