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
    List<Saying> parts =
        fall.shares().stream()
            .filter(share -> share.cause() != Cause.LEAK && share.cause() != Cause.GAUGE)
            .filter(share -> share.pressure().mean() > NAMED)
            .sorted(Comparator.comparingDouble((FallShare s) -> -s.pressure().mean()))
            .map(SoundFall::part)
            .toList();
    Saying whole =
        Saying.of(
            "Of the %s lost in %.0f min",
            Saying.pressure(fall.fall()), (fall.to() - fall.from()) / 60);
    return parts.isEmpty()
        ? Saying.of("%s, nothing is worth a word.", whole)
        : Saying.of("%s, about %s.", whole, listed(parts));
  }

  private static Saying listed(List<Saying> parts) {
    Saying listed = parts.get(0);
    int last = parts.size() - 1;
    for (int i = 1; i <= last; i++) {
      listed = Saying.of(i == last ? "%s and %s" : "%s, %s", listed, parts.get(i));
    }
    return listed;
  }

  private static Saying part(FallShare share) {
    return Saying.of("%s is %s", Saying.pressure(share.pressure().mean()), share.cause().title());
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
