package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The verdicts are common practice, no source; what leads to them is arithmetic. */
class BenchAssessmentTest {
  private static String verdict(BenchReport report) {
    return String.join(" ", Message.inBar(report.verdict()));
  }

  @Test
  void fiveToTenPercentIsWorthAService() {
    BenchReport report = Sheets.judge(100, 100, 93, 100, 101, 99);
    assertEquals(Standing.OUT_OF_LINE, report.injectors().get(2).standing());
    assertTrue(
        report
            .verdict()
            .get(0)
            .toString()
            .startsWith(
                "One of six is out of line: 3 (7.0 % low). Injectors 5 to 10 % out of line"),
        verdict(report));
    assertTrue(verdict(report).contains("worth a service"), verdict(report));
  }

  @Test
  void tenPercentMoreByServiceIsUsual() {
    BenchReport report =
        BenchAssessment.judge(
            Sheets.sheet(
                new double[] {100, 98, 94, 99, 101, 97},
                new double[] {110, 108, 106, 108, 110, 107}),
            Sheets.POINT,
            Sheets.LIMITS,
            Sheets.TODAY);
    assertTrue(
        verdict(report)
            .contains("The service brought about +10 % flow, as a service usually does."),
        verdict(report));
    assertTrue(report.allGood(), verdict(report));
    assertEquals(0.1022, report.gain().orElseThrow().middle(), 1e-3);
  }

  @Test
  void sayItWhenTheBenchCannotDecide() {
    BenchReport report = Sheets.judge(100, 100, 95.4, 100, 100, 100);
    assertFalse(report.injectors().get(2).sure());
    assertTrue(report.injectors().get(0).sure());
    assertTrue(
        verdict(report).contains("No. 3 is too close to the limit to call"), verdict(report));
  }

  @Test
  void mixtureGoesWithTheMean() {
    Mixture mixture = Mixture.underLoad(Sheets.judge(100, 100, 80, 120)).orElseThrow();
    assertEquals(-0.2, mixture.richness().get("3"), 1e-12);
    assertEquals(1.25, mixture.airNumber("3"), 1e-12);
  }

  @Test
  void dripSprayAndCoilAreNamed() {
    BenchReadings bad =
        new BenchReadings(
            OptionalDouble.empty(),
            List.of(),
            Optional.of(new BenchDrops(3, 120)),
            Optional.of(4),
            OptionalDouble.of(0.3));
    List<String> troubles = new InjectorFaults(Sheets.LIMITS).of(bad);
    assertEquals(
        List.of(
            "drips: 3 drops in 2 min",
            "sprays badly: solid stream",
            "coil of 0.3 Ω is like no sound one (2 to 3.2 Ω, or 12 to 17 Ω)"),
        troubles);
    assertEquals(3 / 30e6 / 120, bad.drops().orElseThrow().flow(), 1e-18);
  }

  @Test
  void remindsOfTheShelf() {
    LocalDate day = LocalDate.of(2026, 11, 10);
    assertEquals(
        "Serviced on 10 November 2026, 14 days ago. Refit by 24 November 2026 (common practice, no source).",
        Shelf.words(day, day.plusDays(14), Sheets.LIMITS));
    assertTrue(
        Shelf.words(day, day.plusDays(15), Sheets.LIMITS).contains("over the usual two weeks"));
    assertTrue(Shelf.words(day, day.minusDays(1), Sheets.LIMITS).contains("check the date"));
  }
}
