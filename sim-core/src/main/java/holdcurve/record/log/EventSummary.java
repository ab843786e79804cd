package holdcurve.record.log;

import holdcurve.record.log.RowReader.EventLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is said of the words beside the readings: which counted, and which are only kept.
 *
 * @param stop has its own sentence, so that its words aren't named again
 */
record EventSummary(List<EventLine> events, PumpStop stop) {
  private static final int NAMED = 4;

  List<String> sentences() {
    List<String> said = new ArrayList<>();
    List<EventLine> counted =
        events.stream()
            .filter(line -> line.event().event().counts() && !text(line).equals(stop.words()))
            .toList();
    List<EventLine> kept = events.stream().filter(EventSummary::isKept).toList();
    if (!counted.isEmpty()) {
      said.add("Taken as events: " + named(counted) + ".");
    }
    if (!kept.isEmpty()) {
      said.add("Kept as remarks only: " + named(kept) + "." + hint(kept));
    }
    return said;
  }

  /** A note in a line of its own is spoken of by itself. */
  private static boolean isKept(EventLine line) {
    LogEvent event = line.event().event();
    return !event.counts() && (line.beside() || event.kind() != LogEvent.Kind.NOTE);
  }

  /** A logger repeats its words in every line: each is named once. */
  private static String named(List<EventLine> lines) {
    Map<String, Integer> first = new LinkedHashMap<>();
    lines.forEach(line -> first.putIfAbsent(text(line), line.line()));
    List<String> named = new ArrayList<>();
    first.forEach((text, line) -> named.add("'" + text + "' (line " + line + ")"));
    int more = named.size() - NAMED;
    return more > 0
        ? String.join(", ", named.subList(0, NAMED)) + " and " + more + " more"
        : String.join(", ", named);
  }

  private static String hint(List<EventLine> kept) {
    return kept.stream().anyMatch(line -> text(line).matches("(?i).*\\bpump\\b.*"))
        ? " To mark when the pump started or stopped, write only 'pump on' or 'pump stop'."
        : "";
  }

  private static String text(EventLine line) {
    return PassedOver.shortened(line.event().event().text());
  }
}
