package holdcurve.ui.window.practice;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.file.CircuitWriter;
import holdcurve.file.ExerciseWriter;
import holdcurve.file.SafeFile;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.GaugeSpec;
import holdcurve.training.Exercise;
import holdcurve.training.HiddenFault;
import holdcurve.training.PlausibleSize;
import holdcurve.training.PossibleAnswers;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.training.RandomExercises;
import holdcurve.training.Secret;
import holdcurve.training.Steps;
import holdcurve.ui.window.job.WorkModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** What an instructor writes, turned into exercises. Called on the thread of the screen. */
public final class ExerciseDraft {
  private static final String CIRCUIT = "practice-circuit.circuit.json";

  private final WorkModel work;
  private final Supplier<FaultCatalogue> catalogue;
  private final Random seeds;

  /**
   * A fault as it was chosen.
   *
   * @param size as typed, in the unit of the fault's first parameter; empty for the usual size
   */
  public record Hidden(Suspicion fault, String size) {}

  /**
   * @param seeds of what makes each car differ from its description
   */
  public ExerciseDraft(WorkModel work, Supplier<FaultCatalogue> catalogue, Random seeds) {
    this.work = work;
    this.catalogue = catalogue;
    this.seeds = seeds;
  }

  /** Finds what can be hidden in a circuit; "nothing" comes first. */
  public void offer(Supplier<Circuit> circuit, Consumer<List<Suspicion>> then) {
    work.start(
        "Listing the faults", progress -> PossibleAnswers.of(circuit.get(), catalogue.get()), then);
  }

  /**
   * The exercise as it was filled in.
   *
   * @param problem told in a sentence what is missing
   * @return empty if something is
   */
  public Optional<Exercise> exercise(
      Circuit circuit,
      String title,
      String story,
      int level,
      double minutes,
      List<Hidden> hidden,
      Consumer<String> problem) {
    if (title.isBlank() || story.isBlank()) {
      problem.accept("Give it a title, and write what the owner says.");
      return Optional.empty();
    }
    List<HiddenFault> faults = new ArrayList<>();
    for (Hidden one : hidden) {
      if (one.fault() != null && !one.fault().id().equals(Suspect.NONE)) {
        Optional<HiddenFault> fault = fault(one, problem);
        if (fault.isEmpty()) {
          return Optional.empty();
        }
        faults.add(fault.get());
      }
    }
    return Optional.of(
        new Exercise(
            title.strip(),
            level,
            story.strip(),
            circuit,
            GaugeSpec.usual(),
            Steps.of(circuit),
            minutes,
            new Secret(faults, seeds.nextInt(1 << 30))));
  }

  private Optional<HiddenFault> fault(Hidden one, Consumer<String> problem) {
    String[] id = one.fault().id().split("@", 2);
    if (one.size().isBlank()) {
      return Optional.of(new HiddenFault(id[0], id[1], Double.NaN));
    }
    FaultParameter parameter = catalogue.get().byId(id[0]).orElseThrow().parameters().get(0);
    Unit unit = parameter.unit();
    PlausibleSize plausible = new PlausibleSize(parameter);
    try {
      double size = Double.parseDouble(one.size().strip().replace(',', '.'));
      if (plausible.holds(unit.toSi(size))) {
        return Optional.of(new HiddenFault(id[0], id[1], unit.toSi(size)));
      }
      problem.accept(
          "A size of "
              + one.size().strip()
              + " is beyond anything met with: give "
              + plausible.inUnit()
              + ".");
      return Optional.empty();
    } catch (NumberFormatException e) {
      // told below
    }
    problem.accept("'" + one.size() + "' is no size: give a number in " + unit.symbol() + ".");
    return Optional.empty();
  }

  /** Writes exercises, answers sealed, with their circuit. */
  public void save(Path folder, List<Exercise> exercises, Consumer<String> told) {
    work.start(
        "Writing exercises",
        progress -> {
          Path circuit = folder.resolve(CIRCUIT);
          SafeFile.write(circuit, CircuitWriter.json(exercises.get(0).circuit()));
          exercises.forEach(one -> ExerciseWriter.write(folder, name(one), one, circuit));
          return exercises.size();
        },
        (Integer n) ->
            told.accept((n == 1 ? "1 exercise" : n + " exercises") + " written to " + folder));
  }

  /** Makes cars up and writes them. */
  public void saveSet(Path folder, Circuit circuit, int level, int count, Consumer<String> told) {
    long first = seeds.nextInt(90_000);
    work.start(
        "Making up cars",
        progress -> {
          RandomExercises random = new RandomExercises(circuit, catalogue.get());
          return IntStream.range(0, count).mapToObj(i -> random.of(level, first + i)).toList();
        },
        (List<Exercise> set) -> save(folder, set, told));
  }

  private static String name(Exercise exercise) {
    String plain = exercise.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String stem = plain.replaceAll("^-|-$", "");
    if (stem.isEmpty()) {
      throw InputException.at(
          "title", exercise.title(), "it has no letter for a file name", "use a letter or a digit");
    }
    return stem + ExerciseWriter.ENDING;
  }
}
