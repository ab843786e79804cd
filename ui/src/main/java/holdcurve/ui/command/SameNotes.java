package holdcurve.ui.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** Notes that say the same of several tests, said once. */
final class SameNotes {
  private static final String COLON = ": ";

  private SameNotes() {}

  /**
   * @param notes those about a test begin with its name and a colon
   * @return "base, feed clamped: the pump stopped at 0:00", in the order of the first of each
   */
  static List<String> together(List<String> notes) {
    Map<String, List<String>> tests = new LinkedHashMap<>();
    for (String note : notes) {
      int colon = note.indexOf(COLON);
      String said = colon < 0 ? note : note.substring(colon);
      tests
          .computeIfAbsent(said, key -> new ArrayList<>())
          .add(note.substring(0, Math.max(0, colon)));
    }
    List<String> together = new ArrayList<>();
    tests.forEach(
        (said, names) -> together.add(String.join(", ", new LinkedHashSet<>(names)) + said));
    return together;
  }
}
