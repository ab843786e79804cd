package holdcurve.record.log;

import holdcurve.common.message.Message;
import java.util.ArrayList;
import java.util.List;

/** The last sentences about a log: lines passed over, marks of doubt, and what remains. */
record LogSummary(GaugeLog log, List<PassedOver> passedOver) {
  private static final int NAMED = 8;

  List<Message> sentences() {
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
    List<Message> sentences = new ArrayList<>(Message.plain(said));
    sentences.add(remaining());
    return sentences;
  }

  private Message remaining() {
    List<Reading> hold = log.hold();
    if (hold.isEmpty()) {
      return Message.plain(
          "No readings of the hold yet; " + log.readings().size() + " before the pump stop.");
    }
    int before = log.readings().size() - hold.size();
    return Message.of(
        "%d readings of the hold over %s s, %s to %s%s",
        hold.size(),
        NumberText.few(log.holdSpan()),
        Message.logged(hold.get(0).pressure(), false),
        Message.logged(hold.get(hold.size() - 1).pressure(), true),
        before > 0 ? "; " + before + " before the pump stop." : ".");
  }
}
