package holdcurve.ui.command;

import holdcurve.check.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.file.ExerciseReader;
import holdcurve.file.ExerciseWriter;
import holdcurve.infer.RankingService;
import holdcurve.practice.Belief;
import holdcurve.practice.Debrief;
import holdcurve.practice.Debriefing;
import holdcurve.practice.Exercise;
import holdcurve.practice.RandomExercises;
import holdcurve.practice.Session;
import holdcurve.ui.practice.DebriefText;
import holdcurve.ui.practice.PracticeResults;
import holdcurve.ui.practice.PracticeTalk;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
      "  holdcurve practise scenarios/exercises/long-cranking.exercise.json",
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
      description = "An exercise (*.exercise.json); without one, a car is made up.")
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

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which made-up car (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--make",
      paramLabel = "COUNT",
      description = "Write so many exercises for a class instead, answers sealed.")
  private Integer make;

  @Option(
      names = "--seal",
      description =
          "Write an exercise of your own to --out with its answer sealed, for handing out.")
  private boolean seal;

  @Option(names = "--out", paramLabel = "FOLDER", description = "Where --make and --seal write.")
  private Path folder;

  @Option(
      names = "--lapse",
      paramLabel = "TIMES",
      defaultValue = "60",
      description =
          "How many times faster than in truth the readings come in; 0 for all at once (default:"
              + " ${DEFAULT-VALUE}).")
  private double lapse;

  @Option(names = "--results", paramLabel = "FILE", description = "Add the score to this CSV file.")
  private Path results;

  @Option(
      names = "--mark",
      paramLabel = "TEXT",
      description = "A word of your own for the line in that file; no name is needed.")
  private String mark = "";

  @Override
  public Integer call() {
    if (make != null) {
      return makeClass();
    }
    if (seal) {
      return sealFile();
    }
    return practise(file != null ? ExerciseReader.read(file) : randomExercises().of(level(), seed));
  }

  private int practise(Exercise exercise) {
    PrintWriter out = spec.commandLine().getOut();
    FaultCatalogue catalogue = plugins.catalogue();
    Session session = new Session(exercise, catalogue);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
    double times = lapse > 0 ? lapse : Double.POSITIVE_INFINITY;
    Optional<Belief> answer = new PracticeTalk(session, in, out, times).run();
    if (answer.isEmpty()) {
      out.println("\nNo answer was given, so there is no debrief.");
      return HoldcurveCommand.NO_ANSWER;
    }
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    Debrief debrief =
        new Debriefing(new RankingService(catalogue), catalogue, 1)
            .of(session, answer.get(), progress);
    progress.clear();
    print(exercise, debrief, out);
    if (results != null) {
      PracticeResults.add(results, exercise, debrief, Optional.empty(), mark);
    }
    return 0;
  }

  private static void print(Exercise exercise, Debrief debrief, PrintWriter out) {
    DebriefText text = new DebriefText(exercise, debrief);
    out.println();
    out.println("DEBRIEF");
    text.outcome().forEach(sentence -> Wrapped.print(out, "", sentence));
    table(debrief, out);
    text.steps().forEach(sentence -> Wrapped.print(out, "  - ", sentence));
    paragraphs(text.contrast(), out);
    paragraphs(text.lesson(), out);
    paragraphs(text.score(), out);
    out.flush();
  }

  private static void table(Debrief debrief, PrintWriter out) {
    out.println();
    if (!debrief.lines().isEmpty()) {
      out.println("You and the evidence: per cent given to the right answer.");
    }
    for (Debrief.Line line : debrief.lines()) {
      Wrapped.print(out, "  ", line.step().words() + ": " + line.came() + ".");
      out.println(
          String.format(
              Locale.ROOT,
              "      you, before %3.0f %%   evidence, after %3.0f %%   told %s",
              100 * line.learner(),
              100 * line.evidence(),
              DebriefText.told(line)));
      Wrapped.print(out, "      points at: ", line.leading());
    }
  }

  private static void paragraphs(List<String> sentences, PrintWriter out) {
    if (!sentences.isEmpty()) {
      out.println();
      sentences.forEach(sentence -> Wrapped.print(out, "", sentence));
    }
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

  private int makeClass() {
    if (make < 1 || make > 500) {
      throw InputException.at(
          "command line", "--make " + make, "that many can't be made", "give 1 to 500");
    }
    RandomExercises random = randomExercises();
    for (int i = 0; i < make; i++) {
      Exercise exercise = random.of(level(), seed + i);
      String stem = exercise.title().toLowerCase(Locale.ROOT).replace(' ', '-');
      ExerciseWriter.write(folder(), stem + ExerciseWriter.ENDING, exercise, circuit);
    }
    spec.commandLine().getOut().println(make + " exercises written to " + folder + ".");
    return 0;
  }

  private int sealFile() {
    if (file == null) {
      throw InputException.at("command line", "--seal", "no exercise is named", "name its file");
    }
    if (folder().toAbsolutePath().equals(file.toAbsolutePath().getParent())) {
      throw InputException.at(
          "command line",
          "--out " + folder,
          "the open exercise stands there",
          "name another folder, for what is handed out");
    }
    ExerciseWriter.write(
        folder(),
        file.getFileName().toString(),
        ExerciseReader.read(file),
        ExerciseReader.circuitFile(file));
    spec.commandLine().getOut().println("Sealed into " + folder + ".");
    return 0;
  }

  private Path folder() {
    if (folder == null) {
      throw InputException.at(
          "command line", "--out", "no folder is named", "say where to write with --out");
    }
    return folder;
  }
}
