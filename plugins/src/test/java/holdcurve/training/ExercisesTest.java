package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.inference.ranking.RankingService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped exercises: what they hold, that they can be solved, that guessing is no way. */
class ExercisesTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();

  static List<Path> files() throws IOException {
    return ShippedExercises.files();
  }

  /** A few in the usual build, all with {@code -Dexercises=all}. */
  static Stream<Path> solved() throws IOException {
    List<Path> all = files();
    boolean every = "all".equals(System.getProperty("exercises"));
    return all.stream().filter(file -> every || all.indexOf(file) % 5 == 1);
  }

  @Test
  void thereAreEnoughOfEachSort() throws IOException {
    List<Integer> faults = new ArrayList<>();
    List<Integer> levels = new ArrayList<>();
    for (Path file : files()) {
      Exercise exercise = ShippedExercises.read(file);
      faults.add(exercise.secret().faults().size());
      levels.add(exercise.level());
    }
    assertTrue(faults.size() >= 12, faults.size() + " exercises");
    assertTrue(faults.stream().filter(n -> n == 0).count() >= 2, "without a fault");
    assertTrue(faults.stream().filter(n -> n == 2).count() >= 2, "with two");
    assertTrue(levels.containsAll(List.of(1, 2, 3, 4, 5)), "levels " + levels);
  }

  @ParameterizedTest
  @MethodSource("solved")
  void followingThePlanNamesTheFault(Path file) {
    TrainingSession session = new TrainingSession(ShippedExercises.read(file), CATALOGUE);
    StatedOdds answer = new PlanningLearner(CATALOGUE).solve(session);
    Debrief debrief =
        new Debriefing(new RankedEvidence(new RankingService(CATALOGUE), CATALOGUE), CATALOGUE)
            .of(session, answer, Progress.NONE);
    System.out.printf(
        "%-40s %-50s %5.2f of it, %3.0f points, %d steps%n",
        file.getFileName(),
        debrief.named().id(),
        debrief.answer(),
        debrief.score().total(),
        session.taken().size());
    assertTrue(debrief.isRight(), session.car().truth() + ", but named " + answer.leading());
  }

  /** Sure of some answer or other, right or wrong, without a single step. */
  @ParameterizedTest
  @MethodSource("files")
  void guessingScoresNearNothing(Path file) {
    TrainingSession session = new TrainingSession(ShippedExercises.read(file), CATALOGUE);
    EvidenceAssessor ranked = new RankedEvidence(new RankingService(CATALOGUE), CATALOGUE);
    Evidence prior = ranked.after(session, 0, Progress.NONE);
    Debriefing debriefing = new Debriefing((at, steps, progress) -> prior, CATALOGUE);
    for (PossibleAnswers.Suspicion guess : session.answers()) {
      StatedOdds belief = session.belief(Map.of(guess.id(), 1.0));
      RepairChoice choice = RepairChoice.of(session, guess.id());
      Debrief debrief = debriefing.of(session, belief, Progress.NONE);
      List<RepairChoice.Option> done =
          choice.options().stream().filter(o -> o.cures().contains(guess.id())).toList();
      assertEquals(0, debrief.repaired(choice.judge(done, debrief)).score().total(), 10);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingOfTheFaultShowsBeforehand(Path file) throws IOException {
    Exercise exercise = ShippedExercises.read(file);
    String text = (file.getFileName() + "\n" + Files.readString(file)).toLowerCase();
    for (HiddenFault hidden : exercise.secret().faults()) {
      LeakFault fault = CATALOGUE.byId(hidden.fault()).orElseThrow();
      assertFalse(text.contains(fault.id()), "id");
      assertFalse(text.contains(fault.name().toLowerCase()), "name");
    }
    assertFalse(text.contains("\"secret\""), "sealed");
  }

  @Test
  void madeUpCarsComeFromTheirSeed() throws IOException {
    Exercise shipped = ShippedExercises.read(files().get(0));
    RandomExercises random = new RandomExercises(shipped.circuit(), CATALOGUE);
    for (int level = 1; level <= 5; level++) {
      Exercise made = random.of(level, 17);
      assertEquals(made.secret(), random.of(level, 17).secret());
      assertEquals(level, made.level());
      assertFalse(new TrainingCar(made, CATALOGUE).truth().isEmpty());
    }
  }

  @Test
  void theSameStepAtTheSamePlaceGivesTheSameAnswer() throws IOException {
    Exercise exercise = ShippedExercises.read(files().get(0));
    List<String> told = new ArrayList<>();
    for (int run = 0; run < 2; run++) {
      TrainingSession session = new TrainingSession(exercise, CATALOGUE);
      exercise.steps().stream()
          .filter(session::hasTimeFor)
          .limit(4)
          .forEach(step -> told.add(session.take(step, session.even()).toString()));
    }
    assertEquals(told.subList(0, told.size() / 2), told.subList(told.size() / 2, told.size()));
  }
}
