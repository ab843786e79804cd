package holdcurve.ui.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.CircuitReader;
import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A desktop hands over a file by its name alone. */
class NamedFileTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  private final OpenJobModel model =
      new OpenJobModel(
          JobReader::readUnfinished,
          () -> {
            throw new java.util.concurrent.CancellationException();
          },
          Runnable::run,
          Runnable::run);

  @Test
  void aCircuitBeginsAJob() {
    Path circuit = SCENARIOS.resolve("circuits/four-cylinder-damper.circuit.json");
    NamedFile.open(Desk.alone(model), circuit);
    Job job = model.jobProperty().get();
    assertTrue(job.title().startsWith("New job"), job.title());
    assertEquals(CircuitReader.read(circuit).title(), job.circuit().title());
    assertNull(model.fileProperty().get());
  }

  @Test
  void aJobIsOpened() {
    Path file = SCENARIOS.resolve("check-valve.job.json");
    NamedFile.open(Desk.alone(model), file);
    assertEquals(file, model.fileProperty().get());
    assertEquals(2, model.jobProperty().get().tests().size());
  }
}
