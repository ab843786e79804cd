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
    if (!regained.isEmpty()) {
      return Message.of(
          "In %.0f min, about %s. That is %s.", minutes, both(lost, regained), net(fall));
    }
    Message whole =
        Message.of("Of the %s lost in %.0f min", Message.pressure(fall.fall()), minutes);
    return lost.isEmpty()
        ? Message.of("%s, no part is worth naming.", whole)
        : Message.of("%s, about %s.", whole, listed(lost, "%s is %s"));
  }

  private static Message both(List<FallShare> lost, List<FallShare> regained) {
    Message back = listed(regained, "%s came back by %s");
    return lost.isEmpty() ? back : Message.of("%s, while %s", listed(lost, "%s went by %s"), back);
  }

  private static Message net(FallReport fall) {
    return fall.fall() < 0
        ? Message.of("%s gained on the whole", Message.pressure(-fall.fall()))
        : Message.of("%s lost on the whole", Message.pressure(fall.fall()));
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
