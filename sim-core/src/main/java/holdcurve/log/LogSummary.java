package holdcurve.log;

import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.List;

/** The last sentences about a log: lines passed over, marks of doubt, and what remains. */
record LogSummary(GaugeLog log, List<PassedOver> passedOver) {
  private static final int NAMED = 8;

  List<Saying> sentences() {
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
    List<Saying> sentences = new ArrayList<>(Saying.plain(said));
    sentences.add(remaining());
    return sentences;
  }

  private Saying remaining() {
    List<Reading> hold = log.hold();
    if (hold.isEmpty()) {
      return Saying.plain(
          "No readings of the hold yet; " + log.readings().size() + " before the pump stop.");
    }
    int before = log.readings().size() - hold.size();
    return Saying.of(
        "%d readings of the hold over %s s, %s to %s%s",
        hold.size(),
        Digits.few(log.holdSpan()),
        Saying.logged(hold.get(0).pressure(), false),
        Saying.logged(hold.get(hold.size() - 1).pressure(), true),
        before > 0 ? "; " + before + " before the pump stop." : ".");
  }
}
