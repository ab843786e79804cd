package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.BenchHeadline;
import holdcurve.bench.flowsheet.Standing;
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

  /** What it comes to, as one word that command and window begin with. */
  public BenchHeadline.Kind headline() {
    if (injectors.stream().anyMatch(i -> i.staysOpen() || !i.moves())) {
      return BenchHeadline.Kind.NOT_FIT;
    }
    if (injectors.stream().anyMatch(i -> i.sure() && i.standing() != Standing.IN_LINE)) {
      return BenchHeadline.Kind.OUT_OF_LINE;
    }
    return injectors.stream().allMatch(InjectorDrop::sure)
        ? BenchHeadline.Kind.IN_LINE
        : BenchHeadline.Kind.NOT_SETTLED;
  }

  /** What it says of one injector. */
  public InjectorDrop of(String id) {
    return injectors.stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }
}
