package holdcurve.ui.window.job;

import holdcurve.file.JobReader;
import holdcurve.record.log.Reading;
import java.nio.file.Path;

/** Takes readings until it is killed, and prints a line after each. */
final class TypingProcess {
  private TypingProcess() {}

  /**
   * @param arguments folder to keep work in
   */
  public static void main(String[] arguments) throws InterruptedException {
    Autosave autosave = Autosave.in(Path.of(arguments[0]));
    OpenJobModel model =
        new OpenJobModel(
            JobReader::readUnfinished,
            () -> {
              throw new IllegalStateException("nothing is ranked here");
            },
            Runnable::run,
            Runnable::run,
            autosave);
    model.begin(
        JobEdits.blank("Typed", CircuitTemplates.circuit(CircuitTemplates.all().get(0))), null);
    model.ranking().cancel();
    for (int i = 0; ; i++) {
      model.addReading(JobEdits.FIRST_TEST, Reading.of(i, 2e5 - 10 * i));
      System.out.println(i + 1);
      System.out.flush();
      Thread.sleep(3);
    }
  }
}
