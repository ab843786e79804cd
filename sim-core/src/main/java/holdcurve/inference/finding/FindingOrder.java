package holdcurve.inference.finding;

import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.time.LocalDate;
import java.util.Optional;

/** Which findings are of one time, which later ones overtake, and which contradict each other. */
final class FindingOrder {
  private final Job job;

  FindingOrder(Job job) {
    this.job = job;
  }

  /**
   * Whether one says wet and the other dry, of one place at one time. A joint that stays dry once
   * it was wiped explains the wet one before by spilt fuel.
   */
  boolean contradict(Finding one, Finding other) {
    return isWet(one) != isWet(other)
        && isOfOnePlace(one, other)
        && isOfOneTime(one, other)
        && !isCleared(isWet(one) ? one : other, isWet(one) ? other : one);
  }

  /** Whether another finding makes this one a thing of the past. */
  boolean isOvertaken(Finding finding) {
    return job.findings().stream().anyMatch(other -> overtakes(other, finding));
  }

  private boolean overtakes(Finding later, Finding finding) {
    if (later == finding || !isOfOnePlace(later, finding)) {
      return false;
    }
    if (!isWet(finding)) {
      return isWet(later) && isLater(later, finding);
    }
    return !isWet(later)
        && (isOfOneTime(later, finding)
            ? isCleared(finding, later)
            : isLater(later, finding) && (isWiped(later) || isRepairedBetween(finding, later)));
  }

  private static boolean isCleared(Finding wet, Finding dry) {
    return isWiped(dry) && !isWiped(wet);
  }

  private static boolean isWiped(Finding finding) {
    return finding instanceof JointLook look && look.wiped();
  }

  private static boolean isWet(Finding finding) {
    return finding instanceof JointLook look && look.wet()
        || finding instanceof ReferenceHoseLook hose && hose.fuel()
        || finding instanceof DropCount count && count.drops() > 0;
  }

  /** Of two kinds of look; counts and volumes differ by chance, and the likelihood weighs them. */
  private static boolean isOfOnePlace(Finding one, Finding other) {
    if (one instanceof JointLook a && other instanceof JointLook b) {
      return isSame(a.part(), b.part()) && isSame(a.end(), b.end());
    }
    return one instanceof ReferenceHoseLook && other instanceof ReferenceHoseLook;
  }

  /** What isn't named is all of it. */
  private static boolean isSame(Optional<String> a, Optional<String> b) {
    return a.isEmpty() || b.isEmpty() || a.equals(b);
  }

  private boolean isOfOneTime(Finding one, Finding other) {
    if (one.test().isPresent() && one.test().equals(other.test())) {
      return true;
    }
    Optional<LocalDate> day = day(one);
    boolean apart = one.test().isPresent() && other.test().isPresent() && day.isEmpty();
    return day.equals(day(other)) && !apart && !isRepairedBetween(one, other);
  }

  private boolean isLater(Finding one, Finding other) {
    return day(one).isPresent()
        && day(other).isPresent()
        && day(one).get().isAfter(day(other).get());
  }

  /** On the day of either counts too: nobody notes the hour. */
  private boolean isRepairedBetween(Finding one, Finding later) {
    if (day(one).isEmpty() || day(later).isEmpty()) {
      return false;
    }
    LocalDate from = day(one).get();
    LocalDate to = day(later).get();
    return job.upkeep().repairs().stream()
        .anyMatch(repair -> !repair.date().isBefore(from) && !repair.date().isAfter(to));
  }

  private Optional<LocalDate> day(Finding finding) {
    return finding
        .date()
        .or(
            () ->
                finding
                    .test()
                    .flatMap(id -> job.tests().stream().filter(t -> t.id().equals(id)).findFirst())
                    .flatMap(HoldTest::day));
  }
}
