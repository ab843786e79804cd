package holdcurve.infer;

import holdcurve.attribution.Cause;
import holdcurve.attribution.FallReport;
import holdcurve.attribution.FallShare;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.Reading;
import holdcurve.pass.PassLimit;
import holdcurve.saying.Saying;
import java.util.Comparator;
import java.util.List;

/** What to say of the fall of a circuit that was found sound. */
final class SoundFall {
  /** A part smaller than this isn't worth a word [Pa]. */
  private static final double NAMED = 1e3;

  private final Job job;

  SoundFall(Job job) {
    this.job = job;
  }

  /** How the fall of the first test without clamps divides, and whether it passes the limit. */
  Saying sentence(List<FallReport> falls) {
    return falls.stream()
        .filter(fall -> test(fall).clamped().isEmpty())
        .findFirst()
        .map(fall -> Saying.of("%s%s", divided(fall), passed(test(fall))))
        .orElse(
            Saying.plain(
                "Hose stretch, temperature and the weep of sound seats explain the fall."));
  }

  private HoldTest test(FallReport fall) {
    return job.tests().stream().filter(t -> t.id().equals(fall.test())).findFirst().orElseThrow();
  }

  private static Saying divided(FallReport fall) {
    double minutes = (fall.to() - fall.from()) / 60;
    List<FallShare> lost = named(fall, 1);
    List<FallShare> regained = named(fall, -1);
    if (!regained.isEmpty()) {
      return Saying.of("In %.0f min about %s: %s.", minutes, both(lost, regained), net(fall));
    }
    Saying whole = Saying.of("Of the %s lost in %.0f min", Saying.pressure(fall.fall()), minutes);
    return lost.isEmpty()
        ? Saying.of("%s, nothing is worth a word.", whole)
        : Saying.of("%s, about %s.", whole, listed(lost, "%s is %s"));
  }

  private static Saying both(List<FallShare> lost, List<FallShare> regained) {
    Saying back = listed(regained, "%s came back by %s");
    return lost.isEmpty() ? back : Saying.of("%s, while %s", listed(lost, "%s went by %s"), back);
  }

  private static Saying net(FallReport fall) {
    return fall.fall() < 0
        ? Saying.of("%s gained on the whole", Saying.pressure(-fall.fall()))
        : Saying.of("%s lost on the whole", Saying.pressure(fall.fall()));
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
  private static Saying listed(List<FallShare> shares, String part) {
    Saying listed = part(shares.get(0), part);
    int last = shares.size() - 1;
    for (int i = 1; i <= last; i++) {
      listed = Saying.of(i == last ? "%s and %s" : "%s, %s", listed, part(shares.get(i), part));
    }
    return listed;
  }

  private static Saying part(FallShare share, String part) {
    return Saying.of(
        part, Saying.pressure(Math.abs(share.pressure().mean())), share.cause().title());
  }

  /** Empty where the hold was too short to say. */
  private Saying passed(HoldTest test) {
    PassLimit limit = job.upkeep().pass();
    return test.log().hold().stream()
        .filter(reading -> reading.time() >= limit.time() - 1)
        .findFirst()
        .filter(reading -> reading.time() < limit.time() + 60)
        .map(reading -> sentence(reading, limit))
        .orElse(Saying.plain(""));
  }

  private static Saying sentence(Reading reading, PassLimit limit) {
    return Saying.of(
        " It stood at %s after %.0f min; at least %s is %s.",
        Saying.pressure(reading.pressure()),
        reading.time() / 60,
        Saying.pressure(limit.pressure()),
        reading.pressure() >= limit.pressure() ? "called acceptable" : "asked for, so look again");
  }
}
