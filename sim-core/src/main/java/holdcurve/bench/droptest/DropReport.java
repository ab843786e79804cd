package holdcurve.bench.droptest;

import holdcurve.common.message.Message;
import java.util.List;

/**
 * What a drop-per-pulse test says.
 *
 * @param test the test
 * @param pressure at which flows are stated [Pa gauge]
 * @param injectors the one that passes least first
 * @param advice how many repeats would settle it
 * @param idleFall what the gauge lost between the two readings without any firing [Pa]
 * @param verdict sentences, the most important first
 * @param notes what was understood and assumed
 */
public record DropReport(
    DropTest test,
    double pressure,
    List<InjectorDrop> injectors,
    RepeatAdvice advice,
    double idleFall,
    List<Message> verdict,
    List<Message> notes) {
  /** Format and version that reports carry. */
  public static final String FORMAT = "holdcurve-drop-report/1";

  public DropReport {
    injectors = List.copyOf(injectors);
    verdict = List.copyOf(verdict);
    notes = List.copyOf(notes);
  }

  /** What it says of one injector. */
  public InjectorDrop of(String id) {
    return injectors.stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }
}
