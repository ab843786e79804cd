package holdcurve.bench.flowsheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** How long serviced injectors have lain on the shelf. */
final class Shelf {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private Shelf() {}

  static String words(LocalDate serviced, LocalDate today, BenchLimits limits) {
    long days = ChronoUnit.DAYS.between(serviced, today);
    String since = "Serviced on " + DAY.format(serviced);
    if (days < 0) {
      return since + ". That day is still to come: check the date.";
    }
    String ago =
        since + (days == 0 ? ", today" : ", " + days + (days == 1 ? " day" : " days") + " ago");
    return days > limits.shelfDays()
        ? ago
            + ". That is over the usual two weeks on the shelf (common practice, no source). Test"
            + " spray and drops again."
        : ago
            + ". Refit by "
            + DAY.format(serviced.plusDays(limits.shelfDays()))
            + " (common practice, no source).";
  }
}
