package holdcurve.infer;

import holdcurve.attribution.Cause;
import holdcurve.attribution.FallReport;
import holdcurve.attribution.FallShare;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.Reading;
import holdcurve.pass.PassLimit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What to say of the fall of a circuit that was found sound. */
final class SoundFall {
  /** A part smaller than this isn't worth a word [Pa]. */
  private static final double NAMED = 1e3;

  private final Job job;

  SoundFall(Job job) {
    this.job = job;
  }

  /** How the fall of the first test without clamps divides, and whether it passes the limit. */
  String sentence(List<FallReport> falls) {
    return falls.stream()
        .filter(fall -> test(fall).clamped().isEmpty())
        .findFirst()
        .map(fall -> divided(fall) + passed(test(fall)).orElse(""))
        .orElse("");
  }

  private HoldTest test(FallReport fall) {
    return job.tests().stream().filter(t -> t.id().equals(fall.test())).findFirst().orElseThrow();
  }

  private static String divided(FallReport fall) {
    List<String> parts =
        fall.shares().stream()
            .filter(share -> share.cause() != Cause.LEAK && share.cause() != Cause.GAUGE)
            .filter(share -> share.pressure().mean() > NAMED)
            .sorted(Comparator.comparingDouble((FallShare s) -> -s.pressure().mean()))
            .map(SoundFall::part)
            .toList();
    String whole =
        String.format(
            Locale.ROOT,
            "Of the %.2f bar lost in %.0f min",
            fall.fall() / 1e5,
            (fall.to() - fall.from()) / 60);
    return parts.isEmpty()
        ? whole + ", nothing is worth a word."
        : whole + ", about " + listed(parts) + ".";
  }

  private static String listed(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private static String part(FallShare share) {
    return String.format(
        Locale.ROOT, "%.2f is %s", share.pressure().mean() / 1e5, share.cause().title());
  }

  /** Empty where the hold was too short to say. */
  private Optional<String> passed(HoldTest test) {
    PassLimit limit = job.upkeep().pass();
    return test.log().hold().stream()
        .filter(reading -> reading.time() >= limit.time() - 1)
        .findFirst()
        .filter(reading -> reading.time() < limit.time() + 60)
        .map(reading -> sentence(reading, limit));
  }

  private static String sentence(Reading reading, PassLimit limit) {
    return String.format(
        Locale.ROOT,
        " It stood at %.2f bar after %.0f min; at least %.2f is %s.",
        reading.pressure() / 1e5,
        reading.time() / 60,
        limit.pressure() / 1e5,
        reading.pressure() >= limit.pressure() ? "called acceptable" : "asked for, so look again");
  }
}
