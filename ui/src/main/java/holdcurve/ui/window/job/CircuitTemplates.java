package holdcurve.ui.window.job;

import holdcurve.common.message.Message;
import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Invented circuits to start a job from. */
public final class CircuitTemplates {
  /**
   * A circuit to start from.
   *
   * @param file its name in the program
   * @param title a few words
   * @param what it has, in a sentence
   */
  public record Template(String file, String title, Message what) {}

  private static final List<Template> ALL =
      List.of(
          new Template(
              "six-cylinder-return-line",
              "Six cylinders, one line, damper",
              set("Ring line with six injectors, cold-start injector and damper", 2.0e5)),
          new Template(
              "six-cylinder-ring-rail",
              "Six cylinders, ring rail",
              set("Two rails of three injectors in a ring, no damper", 2.5e5)),
          new Template(
              "four-cylinder-damper",
              "Four cylinders, rail, damper",
              set("One rail with four injectors and a damper before it", 2.5e5)),
          new Template(
              "four-cylinder-no-damper",
              "Four cylinders, no damper",
              set("Short lines, no cold-start injector, no damper", 3.0e5)));

  private CircuitTemplates() {}

  private static Message set(String what, double pressure) {
    return Message.of("%s; set to %s.", what, Message.round(pressure));
  }

  /** In the order in which to offer them. */
  public static List<Template> all() {
    return ALL;
  }

  /** Reads the circuit of a template; call it in the background. */
  public static Circuit circuit(Template template) {
    String name = template.file() + ".circuit.json";
    try (InputStream in = CircuitTemplates.class.getResourceAsStream("circuits/" + name)) {
      return CircuitReader.read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
