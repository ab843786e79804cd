package holdcurve.saying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.log.PressureUnit;
import org.junit.jupiter.api.Test;

class SayingTest {
  private final Saying range =
      Saying.of("%s to %s after %.0f min", Saying.number(1.05e5), Saying.pressure(1.45e5), 10.0);

  /** 1 psi is 6894.757 Pa: NIST Special Publication 811 (2008), appendix B.8. */
  @Test
  void pressuresAreWrittenInTheUnitOfTheReader() {
    assertEquals("1.05 to 1.45 bar after 10 min", range.toString());
    assertEquals("105 to 145 kPa after 10 min", range.in(PressureUnit.KPA));
    assertEquals("15.2 to 21.0 psi after 10 min", range.in(PressureUnit.PSI));
  }

  @Test
  void wordsWithPercentSignsStayAsTheyAre() {
    assertEquals("90 % dry", Saying.plain("90 % dry").in(PressureUnit.KPA));
  }

  @Test
  void aSayingStandsInAnother() {
    Saying whole = Saying.of("It shows %s.", range);
    assertEquals("It shows 105 to 145 kPa after 10 min.", whole.in(PressureUnit.KPA));
  }
}
