package holdcurve.bench.flowsheet;

import holdcurve.common.message.Message;
import java.util.List;

/**
 * The most important of what a sheet says: a word, and the sentences that bear it out. Command,
 * window and printed sheet all begin with it.
 *
 * @param said never empty
 */
public record BenchHeadline(Kind kind, List<Message> said) {
  /** What a set comes to. */
  public enum Kind {
    OUT_OF_LINE("Out of line"),
    NOT_FIT("Not all fit"),
    NO_FLOWS("No flows"),
    NOT_SETTLED("Not settled"),
    IN_LINE("In line");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word on screens and paper. */
    public String word() {
      return word;
    }
  }

  public BenchHeadline {
    said = List.copyOf(said);
  }
}
