package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SetHistoryTest {
  private static BenchReport report(LocalDate day, double... flows) {
    BenchSheet sheet = Sheets.sheet(flows, new double[0]);
    return BenchAssessment.judge(
        new BenchSheet(
            "invented",
            Sheets.BENCH,
            Sheets.BENCH,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.of(day),
            sheet.injectors(),
            List.of()),
        Sheets.POINT,
        Sheets.LIMITS,
        Sheets.TODAY);
  }

  /** All flows down by a tenth is the bench; one down by a tenth is the injector. */
  @Test
  void onlyTheInjectorThatWandersIsNamed() {
    BenchReport first = report(LocalDate.of(2024, 3, 1), 100, 101, 99, 100, 100, 101);
    BenchReport later = report(LocalDate.of(2026, 3, 1), 90, 90.9, 79, 90, 90, 90.9);
    SetHistory history = SetHistory.of(List.of(later, first));
    assertEquals(2, history.visits().size());
    assertEquals("2024-03-01", history.visits().get(0).date());
    assertEquals(
        List.of(
            SetHistory.Trend.STEADY,
            SetHistory.Trend.STEADY,
            SetHistory.Trend.FALLING,
            SetHistory.Trend.STEADY,
            SetHistory.Trend.STEADY,
            SetHistory.Trend.STEADY),
        history.lines().stream().map(SetHistory.Line::trend).toList());
    assertEquals(79 / 90.0 - 0.99, history.lines().get(2).drift().middle(), 1e-9);
    assertTrue(history.said().get(2).startsWith("3: passes less than it did (-11.2 ±"));
  }

  @Test
  void oneSheetHasNoHistory() {
    assertTrue(SetHistory.of(List.of(Sheets.judge(100, 101))).lines().isEmpty());
  }
}
