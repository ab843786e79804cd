package holdcurve.inference.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.Cause;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What took pressure and what gave it back add up to what is read. */
class SoundFallTest {
  private static String said(double fallBar, Map<Cause, Double> bar) {
    List<FallShare> shares =
        Arrays.stream(Cause.values())
            .map(cause -> new FallShare(cause, amount(bar.getOrDefault(cause, 0.0)), amount(0)))
            .toList();
    FallReport fall = new FallReport("hold", 0, 600, 2e5, 2e5 - fallBar * 1e5, shares, List.of());
    return new SoundFall(unread()).sentence(List.of(fall)).in(PressureUnit.BAR);
  }

  /** Nothing is said of a pass limit where nothing was read. */
  private static Job unread() {
    HoldTest hold = HoldTest.of("hold", Set.of(), new GaugeLog("invented", List.of(), 0));
    Job job = InventedJob.of();
    return new Job(job.title(), job.circuit(), job.gauge(), List.of(hold), Map.of(), List.of());
  }

  private static Amount amount(double bar) {
    return new Amount(bar * 1e5, bar * 1e5, bar * 1e5);
  }

  @Test
  void whatOnlyFellIsDivided() {
    assertEquals(
        "The needle fell 0.20 bar in 10 min. About 0.15 bar by normal seepage and 0.05 bar by hose"
            + " stretch.",
        said(0.2, Map.of(Cause.WEEP, 0.15, Cause.CREEP, 0.05)));
  }

  @Test
  void whatCameBackIsSaidApart() {
    assertEquals(
        "The needle fell about 0.77 bar by normal seepage and 0.03 bar by hose stretch. In return"
            + " about 0.60 bar by fuel temperature. Over 10 min that is 0.20 bar lost.",
        said(0.2, Map.of(Cause.WEEP, 0.77, Cause.CREEP, 0.03, Cause.TEMPERATURE, -0.6)));
  }

  @Test
  void aNeedleThatRoseLostNothing() {
    assertEquals(
        "In return about 0.10 bar by fuel temperature. Over 10 min that is 0.10 bar gained.",
        said(-0.1, Map.of(Cause.TEMPERATURE, -0.1)));
  }
}
