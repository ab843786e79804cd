package holdcurve.log;

import java.util.ArrayList;
import java.util.List;

/** The last sentences about a log: lines passed over, marks of doubt, and what remains. */
record LogSummary(GaugeLog log, List<PassedOver> passedOver) {
  private static final int NAMED = 8;

  List<String> sentences() {
    List<String> said = new ArrayList<>();
    passedOver.stream().limit(NAMED).map(PassedOver::sentence).forEach(said::add);
    int rest = passedOver.size() - NAMED;
    if (rest > 0) {
      int line = passedOver.get(NAMED).line();
      said.add("Also passed over: " + rest + " more, the first of them line " + line + ".");
    }
    long doubtful = log.readings().stream().filter(Reading::doubtful).count();
    if (doubtful > 0) {
      said.add("Readings marked as doubtful: " + doubtful + ".");
    }
    said.add(remaining());
    return said;
  }

  private String remaining() {
    List<Reading> hold = log.hold();
    if (hold.isEmpty()) {
      return "No readings of the hold yet; " + log.readings().size() + " before the pump stop.";
    }
    int before = log.readings().size() - hold.size();
    return hold.size()
        + " readings of the hold over "
        + Digits.few(log.holdSpan())
        + " s, "
        + bar(hold.get(0))
        + " to "
        + bar(hold.get(hold.size() - 1))
        + " bar"
        + (before > 0 ? "; " + before + " before the pump stop." : ".");
  }

  private static String bar(Reading reading) {
    return Digits.between(2, 3, PressureUnit.BAR.fromPascal(reading.pressure()));
  }
}
