package holdcurve.casebook;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which cases are shown, and in which order.
 *
 * @param search words that must all stand somewhere in a case; empty for all
 * @param state only jobs that are so far; empty for all
 * @param order by what they are sorted
 */
public record CaseSelection(String search, Optional<JobState> state, Order order) {
  /** All, the latest first. */
  public static final CaseSelection ALL = new CaseSelection("", Optional.empty(), Order.DATE);

  /** What cases are sorted by. Where that is the same, the latest comes first. */
  public enum Order {
    DATE,
    CAR,
    STATE,
    FILE;

    /** As it is typed. */
    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** The cases of a book that are shown. */
  public List<CaseEntry> of(CaseBook book) {
    String[] words = search.toLowerCase(Locale.ROOT).strip().split("\\s+");
    return book.entries().stream()
        .filter(entry -> state.isEmpty() || state.get() == entry.state())
        .filter(entry -> hasAll(text(book, entry), words))
        .sorted(comparator())
        .toList();
  }

  private static boolean hasAll(String text, String[] words) {
    for (String word : words) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }

  private static String text(CaseBook book, CaseEntry entry) {
    return String.join(
            "\n",
            entry.car(),
            book.correction(entry).car(),
            entry.date(),
            entry.state().words(),
            entry.answer().map(KnownAnswer::words).orElse(""),
            entry.repair().map(repair -> repair.part() + " " + repair.note()).orElse(""),
            entry.file().toString())
        .toLowerCase(Locale.ROOT);
  }

  private Comparator<CaseEntry> comparator() {
    Comparator<CaseEntry> latest =
        Comparator.comparing(CaseEntry::date).reversed().thenComparing(CaseEntry::file);
    return switch (order) {
      case DATE -> latest;
      case CAR ->
          Comparator.comparing(CaseEntry::car, String.CASE_INSENSITIVE_ORDER).thenComparing(latest);
      case STATE -> Comparator.comparing(CaseEntry::state).thenComparing(latest);
      case FILE -> Comparator.comparing(CaseEntry::file);
    };
  }
}
