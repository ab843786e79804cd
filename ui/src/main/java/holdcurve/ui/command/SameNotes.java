package holdcurve.ui.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Notes that say the same of several tests or parts, said once. */
final class SameNotes {
  private static final String COLON = ": ";

  private SameNotes() {}

  /**
   * @param notes those about a test or a part begin with its name and a colon
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
    tests.forEach((said, names) -> together.add(listed(new LinkedHashSet<>(names)) + said));
    return together;
  }

  /** "Injectors no. 1, 2, 5": numbers of one set under one name. */
  private static String listed(Set<String> names) {
    StringBuilder listed = new StringBuilder();
    String set = "";
    for (String name : names) {
      String own = name.replaceAll("\\d+$", "");
      boolean goesOn = !own.equals(name) && own.equals(set);
      listed
          .append(listed.isEmpty() ? "" : ", ")
          .append(goesOn ? name.substring(own.length()) : name);
      set = own;
    }
    return listed.toString();
  }
}
