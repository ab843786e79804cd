package holdcurve.inference.explain;

import holdcurve.common.message.Message;
import holdcurve.physics.balance.Cause;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.Comparator;
import java.util.List;

/** What to say of the fall of a circuit that was found sound. */
public final class SoundFall {
  /** A part smaller than this isn't worth a word [Pa]. */
  private static final double NAMED = 1e3;

  /** Parts that are named. */
  private static final int MOST = 4;

  private final Job job;

  public SoundFall(Job job) {
    this.job = job;
  }

  /** How the fall of the first test without clamps divides. */
  public Message sentence(List<FallReport> falls) {
    return falls.stream()
        .filter(fall -> test(fall).clamped().isEmpty())
        .findFirst()
        .map(SoundFall::divided)
        .orElse(
            Message.plain("Hose stretch, fuel temperature and normal seepage explain the fall."));
  }

  private HoldTest test(FallReport fall) {
    return job.tests().stream().filter(t -> t.id().equals(fall.test())).findFirst().orElseThrow();
  }

  private static Message divided(FallReport fall) {
    double minutes = (fall.to() - fall.from()) / 60;
    List<FallShare> lost = named(fall, 1);
    List<FallShare> regained = named(fall, -1);
    if (regained.isEmpty()) {
      Message whole =
          Message.of("The needle fell %s in %.0f min.", Message.pressure(fall.fall()), minutes);
      return lost.isEmpty() ? whole : Message.of("%s About %s.", whole, listed(lost, "%s by %s"));
    }
    Message back =
        Message.of(
            "In return about %s. Over %.0f min that is %s.",
            listed(regained, "%s by %s"), minutes, net(fall));
    return lost.isEmpty()
        ? back
        : Message.of("The needle fell about %s. %s", listed(lost, "%s by %s"), back);
  }

  private static Message net(FallReport fall) {
    return fall.fall() < 0
        ? Message.of("%s gained", Message.pressure(-fall.fall()))
        : Message.of("%s lost", Message.pressure(fall.fall()));
  }

  /**
   * @param sign 1 for what took pressure, -1 for what gave it back
   * @return largest first
   */
  private static List<FallShare> named(FallReport fall, int sign) {
    return fall.shares().stream()
        .filter(share -> share.cause() != Cause.LEAK && share.cause() != Cause.GAUGE)
        .filter(share -> sign * share.pressure().mean() > NAMED)
        .sorted(Comparator.comparingDouble(share -> -sign * share.pressure().mean()))
        .limit(MOST)
        .toList();
  }

  /**
   * @param part how a pressure and its cause are said
   */
  private static Message listed(List<FallShare> shares, String part) {
    Message listed = part(shares.get(0), part);
    int last = shares.size() - 1;
    for (int i = 1; i <= last; i++) {
      listed = Message.of(i == last ? "%s and %s" : "%s, %s", listed, part(shares.get(i), part));
    }
    return listed;
  }

  private static Message part(FallShare share, String part) {
    return Message.of(
        part, Message.pressure(Math.abs(share.pressure().mean())), share.cause().title());
  }
}
