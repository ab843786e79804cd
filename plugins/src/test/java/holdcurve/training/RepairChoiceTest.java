package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.file.ExerciseReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RepairChoiceTest {
  private static final Path EXERCISES =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", "exercises");
  private static final String TRUTH = "check-valve-seat@check-valve";
  private static final String NAMED = "regulator-seat@regulator";

  private final TrainingSession session =
      new TrainingSession(
          ExerciseReader.read(EXERCISES.resolve("long-cranking.exercise.json")),
          FaultCatalogue.load());
  private final RepairChoice choice = RepairChoice.of(session, NAMED);

  private RepairChoice.Option curing(String id) {
    return choice.options().stream()
        .filter(option -> option.cures().contains(id))
        .findFirst()
        .orElseThrow();
  }

  private static Debrief debrief(TrainingSession session, Set<String> right) {
    PossibleAnswers.Suspicion truth =
        session.answers().stream()
            .filter(answer -> answer.id().equals(session.car().truth()))
            .findFirst()
            .orElseThrow();
    return new Debrief(
        truth,
        right,
        truth,
        List.of(),
        1,
        1,
        new Score(0, 0, 0, 0),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  @Test
  void offersWhatHelpsWhatWasNamedNothingAndOthers() {
    assertEquals(6, choice.options().size());
    assertFalse(curing(TRUTH).words().isBlank());
    assertFalse(curing(NAMED).words().isBlank());
    assertEquals("Nothing to repair.", curing("none").words());
    assertEquals(choice, RepairChoice.of(session, NAMED), "the same list each time");
  }

  @Test
  void theRightRepairAloneCountsInFull() {
    Debrief debrief = debrief(session, Set.of(TRUTH));
    RepairScore score = choice.judge(List.of(curing(TRUTH)), debrief);
    assertEquals(10, score.points());
    assertTrue(score.isCured());
  }

  @Test
  void aNeedlessPartTakesHalfAndAWrongOneAll() {
    Debrief debrief = debrief(session, Set.of(TRUTH));
    RepairScore both = choice.judge(List.of(curing(TRUTH), curing(NAMED)), debrief);
    assertEquals(5, both.points());
    assertEquals(List.of(curing(NAMED).words()), both.needless());
    RepairScore wrong = choice.judge(List.of(curing(NAMED)), debrief);
    assertEquals(0, wrong.points());
    assertFalse(wrong.isCured());
  }

  @Test
  void whatCouldNotBeToldApartIsNoMistakeThoughItCuresNothing() {
    RepairScore score =
        choice.judge(List.of(curing(NAMED)), debrief(session, Set.of(TRUTH, NAMED)));
    assertEquals(10, score.points());
    assertFalse(score.isCured());
    assertEquals(List.of(curing(NAMED).words()), score.equivalent());
  }

  @Test
  void leavingASoundCarAloneIsRight() {
    TrainingSession sound =
        new TrainingSession(
            new Exercise(
                "Sound",
                1,
                "",
                session.exercise().circuit(),
                session.exercise().gauge(),
                session.exercise().steps(),
                60,
                new Secret(List.of(), 3)),
            FaultCatalogue.load());
    RepairChoice offered = RepairChoice.of(sound, TRUTH);
    Debrief debrief = debrief(sound, Set.of("none"));
    for (RepairChoice.Option option : offered.options()) {
      double wanted = option.cures().contains("none") ? 10 : 0;
      assertEquals(wanted, offered.judge(List.of(option), debrief).points(), option.words());
    }
  }
}
