package holdcurve.casebook;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What the user said to the case book.
 *
 * @param folders whose jobs it lists
 * @param rates which rankings start from
 * @param corrections job file → what is said of it
 */
public record CaseNotes(List<Path> folders, RatesInUse rates, Map<Path, Correction> corrections) {
  /** Nothing said yet. */
  public static final CaseNotes NONE = new CaseNotes(List.of(), RatesInUse.SHIPPED, Map.of());

  public CaseNotes {
    folders = List.copyOf(folders);
    corrections = Map.copyOf(corrections);
  }

  /** The same with other folders. */
  public CaseNotes withFolders(List<Path> others) {
    return new CaseNotes(others, rates, corrections);
  }

  /** The same with other rates. */
  public CaseNotes withRates(RatesInUse others) {
    return new CaseNotes(folders, others, corrections);
  }

  /** The same with something else said of a job. */
  public CaseNotes with(Path job, UnaryOperator<Correction> change) {
    Map<Path, Correction> changed = new HashMap<>(corrections);
    Correction now = change.apply(changed.getOrDefault(job, Correction.EMPTY));
    if (now.equals(Correction.EMPTY)) {
      changed.remove(job);
    } else {
      changed.put(job, now);
    }
    return new CaseNotes(folders, rates, changed);
  }
}
