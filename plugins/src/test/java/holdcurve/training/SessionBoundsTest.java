package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.record.log.Reading;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What bounds a debrief: steps, readings, sizes. */
class SessionBoundsTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();

  private static Exercise exercise(List<HiddenFault> faults) {
    Exercise e =
        ShippedExercises.read(ShippedExercises.FOLDER.resolve("long-cranking.exercise.json"));
    return new Exercise(
        e.title(),
        e.level(),
        e.story(),
        e.circuit(),
        e.gauge(),
        e.steps(),
        1000,
        new Secret(faults, 7));
  }

  @Test
  void noCarTakesMoreThanTwelveSteps() {
    TrainingSession session = new TrainingSession(exercise(List.of()), CATALOGUE);
    Step look = Steps.byId(session.exercise().steps(), "look-into-thin-hose");
    for (int i = 0; i < TrainingSession.MOST_STEPS; i++) {
      session.take(look, session.even());
    }
    assertFalse(session.hasTimeFor(look));
    assertThrows(IllegalStateException.class, () -> session.take(look, session.even()));
  }

  @Test
  void whatTheLearnerTypedIsWhatCounts() {
    TrainingSession session = new TrainingSession(exercise(List.of()), CATALOGUE);
    session.take(Steps.byId(session.exercise().steps(), "hold"), session.even());
    List<Reading> typed = List.of(Reading.of(0, 2e5), Reading.of(300, 1.1e5));
    session.read(typed);
    assertEquals(typed, session.job(1).tests().get(0).log().hold());
    assertThrows(IllegalArgumentException.class, () -> session.read(typed.subList(0, 1)));
    assertThrows(
        IllegalArgumentException.class,
        () -> session.read(Collections.nCopies(61, Reading.of(0, 2e5))));
  }

  /** 0.6 mL/min typed as 0.6 in SI, and a negative one. */
  @Test
  void sizesBeyondAnythingMetWithAreRefused() {
    for (double size : new double[] {0.6, -1e-8, 0, 1e-3}) {
      HiddenFault fault = new HiddenFault("check-valve-seat", "", size);
      String message =
          assertThrows(
                  InputException.class,
                  () -> new TrainingSession(exercise(List.of(fault)), CATALOGUE))
              .getMessage();
      assertTrue(message.contains("beyond anything met with"), message);
      assertTrue(message.contains("mL/min"), message);
    }
  }
}
