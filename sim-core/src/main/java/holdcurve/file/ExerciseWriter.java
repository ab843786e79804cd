package holdcurve.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.training.Exercise;
import holdcurve.training.HiddenFault;
import holdcurve.training.Seal;
import holdcurve.training.Secret;
import holdcurve.training.Step;
import holdcurve.training.Steps;
import java.nio.file.Path;
import java.util.List;

/** Writes {@code *.exercise.json} with its answer sealed. */
public final class ExerciseWriter {
  /** How exercise files are named. */
  public static final String ENDING = ".exercise.json";

  private ExerciseWriter() {}

  /**
   * Writes an exercise, its answer sealed. It names the circuit file if that can be reached from
   * the folder, and else gets a copy beside it.
   *
   * @param name of the exercise file; says nothing of the fault
   * @throws holdcurve.common.input.InputException if a file can't be written
   */
  public static void write(Path folder, String name, Exercise exercise, Path circuitFile) {
    Path from = folder.toAbsolutePath().normalize();
    Path circuit = circuitFile.toAbsolutePath().normalize();
    Path highest = from.getParent() == null ? from : from.getParent();
    if (!circuit.startsWith(highest)) {
      circuit = from.resolve(circuit.getFileName());
      SafeFile.write(circuit, CircuitWriter.json(exercise.circuit()));
    }
    String named = from.relativize(circuit).toString().replace('\\', '/');
    SafeFile.write(folder.resolve(name), json(exercise, named));
  }

  /**
   * The text of an exercise file.
   *
   * @param circuit name of the circuit file as seen from the exercise's own folder
   */
  static String json(Exercise exercise, String circuit) {
    ObjectNode root = JsonFiles.object();
    root.put("format", Exercise.FORMAT);
    root.put("title", exercise.title());
    root.put("level", exercise.level());
    root.put("story", exercise.story());
    root.put("circuit", circuit);
    JobWriter.addGauge(root.putObject("gauge"), exercise.gauge());
    List<String> steps = exercise.steps().stream().map(Step::id).toList();
    if (!steps.equals(Steps.of(exercise.circuit()).stream().map(Step::id).toList())) {
      steps.forEach(root.withArray("steps")::add);
    }
    root.put("minutes", CircuitWriter.plain(exercise.minutes()));
    root.put(ExerciseReader.SEALED, Seal.close(secret(exercise.secret()), exercise.story()));
    return JsonFiles.print(root);
  }

  private static String secret(Secret secret) {
    ObjectNode node = JsonFiles.object();
    for (HiddenFault fault : secret.faults()) {
      ObjectNode one = node.withArray("faults").addObject();
      one.put("fault", fault.fault());
      if (!fault.site().isEmpty()) {
        one.put("site", fault.site());
      }
      if (!Double.isNaN(fault.size())) {
        one.put("size", fault.size());
      }
    }
    node.withArray("faults");
    node.put("seed", secret.seed());
    return node.toString();
  }
}
