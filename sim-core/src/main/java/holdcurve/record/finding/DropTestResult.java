package holdcurve.record.finding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a drop test in the car came to. How much an injector passes while it is open says nothing of
 * leaks; only one that goes on passing fuel after it was fired does.
 *
 * @param part id of the injectors
 * @param low names of those that pass surely less than the middle one
 * @param high names of those that pass surely more
 * @param staysOpen names of those after which the needle went on falling
 * @param watched whether the needle was watched after the firings
 * @param date the day; absent if not noted
 */
public record DropTestResult(
    String part,
    List<String> low,
    List<String> high,
    List<String> staysOpen,
    boolean watched,
    Optional<LocalDate> date)
    implements Finding {
  public DropTestResult {
    low = List.copyOf(low);
    high = List.copyOf(high);
    staysOpen = List.copyOf(staysOpen);
    if (!staysOpen.isEmpty() && !watched) {
      throw new IllegalArgumentException("nobody watched the needle after the firings");
    }
  }

  @Override
  public Optional<String> test() {
    return Optional.empty();
  }

  @Override
  public DropTestResult on(LocalDate day) {
    return new DropTestResult(part, low, high, staysOpen, watched, Optional.of(day));
  }

  @Override
  public String inWords() {
    List<String> said = new ArrayList<>();
    add(said, staysOpen, "not shutting after the firing");
    add(said, low, "passing less than the others");
    add(said, high, "passing more than the others");
    if (said.isEmpty()) {
      said.add("none surely out of line");
    }
    if (watched && staysOpen.isEmpty()) {
      said.add("all shut after the firing");
    }
    return "drop test: " + String.join("; ", said);
  }

  private static void add(List<String> said, List<String> names, String what) {
    if (!names.isEmpty()) {
      said.add("injector " + String.join(", ", names) + " " + what);
    }
  }
}
