package holdcurve.advice.whatif;

import java.util.List;

/**
 * Before and after.
 *
 * @param title of the job or circuit
 * @param changes what was changed, in plain words
 * @param notes what a reader should know
 */
public record Comparison(
    String title, List<String> changes, Outlook before, Outlook after, List<String> notes) {
  /** Format and version that files with a comparison carry. */
  public static final String FORMAT = "holdcurve-whatif/1";

  public Comparison {
    changes = List.copyOf(changes);
    notes = List.copyOf(notes);
  }
}
