package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.file.DebriefWriter;
import holdcurve.file.ExerciseReader;
import holdcurve.inference.ranking.RankingService;
import holdcurve.training.Debrief;
import holdcurve.training.Debriefing;
import holdcurve.training.EvidenceAssessor;
import holdcurve.training.Exercise;
import holdcurve.training.RandomExercises;
import holdcurve.training.RankedEvidence;
import holdcurve.training.RepairChoice;
import holdcurve.training.StatedOdds;
import holdcurve.training.TrainingSession;
import holdcurve.ui.practice.Course;
import holdcurve.ui.practice.PracticeResults;
import holdcurve.ui.practice.PracticeTalk;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a learner find a hidden fault. */
@Command(
    name = "practise",
    description = {
      "Find a hidden fault: choose tests, read the needle, name the fault. A debrief follows.",
      "  holdcurve practise --list",
      "  holdcurve practise long-cranking",
      "  holdcurve practise --circuit my-car.circuit.json --level 2 --seed 7",
      "  holdcurve practise --circuit my-car.circuit.json --level 2 --make 12 --out class"
    },
    mixinStandardHelpOptions = true)
final class PractiseCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(
      paramLabel = "EXERCISE",
      arity = "0..1",
      description =
          "An exercise (*.exercise.json) or its short name; without one, a car is made up.")
  private Path file;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "The circuit of cars that are made up.")
  private Path circuit;

  @Option(
      names = "--level",
      paramLabel = "N",
      defaultValue = "2",
      description = "How hard, 1 easy to 5 nasty (default: ${DEFAULT-VALUE}).")
  private int level;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Mixin private ClassFiles files;

  @Option(
      names = "--lapse",
      paramLabel = "TIMES",
      defaultValue = "60",
      description =
          "Speed: 60 means one minute per second; 0 for all at once (default:"
              + " ${DEFAULT-VALUE}).")
  private double lapse;

  @Option(
      names = "--dial",
      description = "Read the needle yourself: type each reading. What you type is judged.")
  private boolean dial;

  @Option(names = "--list", description = "List the exercises that come with the program.")
  private boolean list;

  @Option(names = "--results", paramLabel = "FILE", description = "Add the score to this CSV file.")
  private Path results;

  @Option(
      names = "--mark",
      paramLabel = "TEXT",
      description = "A word of your own for the line in that file; no name is needed.")
  private String mark = "";

  @Override
  public Integer call() {
    if (list) {
      CourseList.print(Course.lessons(), spec.commandLine().getOut());
      return 0;
    }
    if (files.isAsked()) {
      String done =
          files.write(
              file, this::randomExercises, circuit, level(), output.seed, plugins.catalogue());
      spec.commandLine().getOut().println(done);
      return 0;
    }
    return practise(
        file != null
            ? ExerciseReader.read(exerciseFile())
            : randomExercises().of(level(), output.seed));
  }

  /** A file, or what a short name stands for. */
  private Path exerciseFile() {
    return Files.exists(file)
        ? file
        : Course.lessons().stream()
            .filter(lesson -> lesson.name().equals(file.toString()))
            .map(Course.Lesson::file)
            .findFirst()
            .orElse(file);
  }

  private int practise(Exercise exercise) {
    Printout out = new Printout(spec.commandLine().getOut(), units.unit());
    FaultCatalogue catalogue = plugins.catalogue();
    TrainingSession session = new TrainingSession(exercise, catalogue);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
    double times = lapse > 0 ? lapse : Double.POSITIVE_INFINITY;
    PracticeTalk talk = new PracticeTalk(session, in, out, units.unit(), times, dial);
    Optional<StatedOdds> answer = talk.run();
    if (answer.isEmpty()) {
      out.println("\nNo answer was given, so there is no debrief.");
      return HoldcurveCommand.NO_ANSWER;
    }
    RepairChoice choice = RepairChoice.of(session, answer.get().leading());
    List<RepairChoice.Option> repairs = talk.repairs(choice);
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    EvidenceAssessor evidence = new RankedEvidence(new RankingService(catalogue), catalogue);
    Debrief told = new Debriefing(evidence, catalogue).of(session, answer.get(), progress);
    progress.clear();
    Debrief debrief = repairs.isEmpty() ? told : told.repaired(choice.judge(repairs, told));
    DebriefPrint.print(debrief, out);
    output.write(() -> DebriefWriter.json(exercise, debrief));
    if (results != null) {
      PracticeResults.add(results, PracticeResults.Result.of(exercise, debrief, mark));
    }
    return 0;
  }

  private int level() {
    if (level < 1 || level > 5) {
      throw InputException.at(
          "command line", "--level " + level, "there is no such level", "give 1 to 5");
    }
    return level;
  }

  private RandomExercises randomExercises() {
    if (circuit == null) {
      throw InputException.at(
          "command line",
          "practise",
          "there is neither an exercise nor a circuit",
          "name an exercise, or a circuit with --circuit");
    }
    return new RandomExercises(CircuitReader.read(circuit), plugins.catalogue());
  }
}
