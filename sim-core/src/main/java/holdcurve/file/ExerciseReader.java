package holdcurve.file;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.GaugeSpec;
import holdcurve.training.Exercise;
import holdcurve.training.HiddenFault;
import holdcurve.training.Seal;
import holdcurve.training.Secret;
import holdcurve.training.Step;
import holdcurve.training.Steps;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Reads {@code *.exercise.json} and the circuit that it names, relative to its own folder. */
public final class ExerciseReader {
  static final String SEALED = "sealed";
  static final String SECRET = "secret";

  private static final Set<String> ENTRIES =
      Set.of(
          "format", "title", "level", "story", "circuit", "gauge", "steps", "minutes", SEALED,
          SECRET, "notes");
  private static final Set<String> SECRET_ENTRIES = Set.of("faults", "seed");
  private static final Set<String> FAULT_ENTRIES = Set.of("fault", "site", "size");

  private ExerciseReader() {}

  /**
   * @throws InputException if the exercise or its circuit can't be used
   */
  public static Exercise read(Path file) {
    JsonPlace root = JsonFiles.read(file, "holdcurve-exercise", 1);
    root.allow(ENTRIES);
    Circuit circuit = CircuitReader.read(circuitFile(file, root));
    return new Exercise(
        root.get("title", "give the exercise a title").text("write what you call it"),
        level(root.get("level", "say how hard it is, 1 to 5")),
        root.get("story", "tell what the owner says").text("write what the owner says"),
        circuit,
        root.find("gauge").map(JobReader::gauge).orElseGet(GaugeSpec::usual),
        steps(root, circuit),
        root.get("minutes", "say how many minutes there are").number(5, 1000, " min"),
        secret(root));
  }

  /**
   * The circuit file that an exercise names.
   *
   * @throws InputException if it names none
   */
  public static Path circuitFile(Path file) {
    return circuitFile(file, JsonFiles.read(file, "holdcurve-exercise", 1));
  }

  private static Path circuitFile(Path file, JsonPlace root) {
    String remedy = "name the circuit file, such as \"../circuits/my-car.circuit.json\"";
    return Siblings.of(file, root.get("circuit", remedy), remedy);
  }

  private static int level(JsonPlace place) {
    double level = place.number(1, 5, "");
    if (level != Math.rint(level)) {
      throw place.bad(place.shown() + " is no whole number", "give 1, 2, 3, 4 or 5");
    }
    return (int) level;
  }

  private static List<Step> steps(JsonPlace root, Circuit circuit) {
    List<Step> all = Steps.of(circuit);
    if (root.find("steps").isEmpty()) {
      return all;
    }
    String remedy = "use " + Words.list(all.stream().map(Step::id).toList());
    List<Step> steps = new ArrayList<>();
    for (JsonPlace place : root.get("steps", remedy).items(remedy)) {
      String id = place.text(remedy);
      steps.add(
          all.stream()
              .filter(step -> step.id().equals(id))
              .findFirst()
              .orElseThrow(() -> place.bad("this circuit has no step '" + id + "'", remedy)));
    }
    if (steps.isEmpty()) {
      throw root.get("steps", remedy).bad("no step is allowed", remedy);
    }
    return steps;
  }

  private static Secret secret(JsonPlace root) {
    if (root.find(SECRET).isPresent()) {
      return secretIn(root.get(SECRET, ""));
    }
    JsonPlace sealed = root.get(SEALED, "seal the exercise with 'holdcurve practise --seal'");
    String text = sealed.text("leave the sealed answer as it was written");
    try {
      String opened = Seal.open(text, root.get("story", "").text(""));
      return secretIn(JsonFiles.part(root.file(), SEALED, opened));
    } catch (IllegalArgumentException e) {
      throw InputException.because(
          root.file(),
          SEALED,
          "the sealed answer doesn't belong to this story, or is damaged",
          "take the exercise as it was handed out",
          e);
    }
  }

  private static Secret secretIn(JsonPlace place) {
    place.requireObject("write { \"faults\": [ ... ], \"seed\": 1 }");
    place.allow(SECRET_ENTRIES);
    List<HiddenFault> faults = new ArrayList<>();
    for (JsonPlace one :
        place.get("faults", "list the faults, or write [ ] for none").items("write [ ]")) {
      faults.add(fault(one));
    }
    double seed = place.get("seed", "give any whole number").number(0, 1e15, "");
    return new Secret(faults, Math.round(seed));
  }

  private static HiddenFault fault(JsonPlace place) {
    place.requireObject("write { \"fault\": \"check-valve-seat\" }");
    place.allow(FAULT_ENTRIES);
    String remedy = "name a fault as 'holdcurve faults' lists it";
    return new HiddenFault(
        place.get("fault", remedy).text(remedy),
        place.find("site").map(site -> site.text("name a site")).orElse(""),
        place.find("size").map(size -> size.number("give a number")).orElse(Double.NaN));
  }
}
