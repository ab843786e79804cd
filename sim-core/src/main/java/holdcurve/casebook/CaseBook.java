package holdcurve.casebook;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The jobs of chosen folders, and what the user said about them.
 *
 * @param entries jobs that can be read
 * @param broken files and folders that can't
 * @param corrections job file → what the user says of it
 */
public record CaseBook(
    List<CaseEntry> entries, List<BrokenCase> broken, Map<Path, Correction> corrections) {
  public CaseBook {
    entries = List.copyOf(entries);
    broken = List.copyOf(broken);
    corrections = Map.copyOf(corrections);
  }

  /** What the user says of a job. */
  public Correction correction(CaseEntry entry) {
    return corrections.getOrDefault(entry.file(), Correction.EMPTY);
  }

  /**
   * Id of the fault that a case confirms: what the user says, else the fault of its only repair
   * where the next hold proved that.
   */
  public Optional<String> confirmed(CaseEntry entry) {
    String said = correction(entry).fault();
    if (!said.isEmpty()) {
      return said.equals(Correction.NONE) ? Optional.empty() : Optional.of(said);
    }
    return entry
        .repair()
        .filter(repair -> entry.repairs() == 1 && entry.proof() == Proof.PROVED)
        .map(repair -> repair.fault().replaceFirst("@.*", ""))
        .filter(fault -> !fault.isEmpty());
  }

  /** Fault id → confirmed cases. */
  public Map<String, Integer> counts() {
    Map<String, Integer> counts = new TreeMap<>();
    entries.forEach(
        entry -> confirmed(entry).ifPresent(fault -> counts.merge(fault, 1, Integer::sum)));
    return counts;
  }

  /** What tells a car from others: what the user typed, else the owner's words. */
  public String car(CaseEntry entry) {
    String typed = correction(entry).car();
    return (typed.isEmpty() ? entry.car() : typed).toLowerCase(Locale.ROOT).strip();
  }

  /** Other jobs of the same car, oldest first. */
  public List<CaseEntry> sameCar(CaseEntry entry) {
    return entries.stream()
        .filter(other -> !other.file().equals(entry.file()) && car(other).equals(car(entry)))
        .sorted(java.util.Comparator.comparing(CaseEntry::date))
        .toList();
  }
}
