package holdcurve.common.message;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class MessageTest {
  private final Message range =
      Message.of("%s to %s after %.0f min", Message.number(1.05e5), Message.pressure(1.45e5), 10.0);

  /** 1 psi is 6894.757 Pa: NIST Special Publication 811 (2008), appendix B.8. */
  @Test
  void pressuresAreWrittenInTheUnitOfTheReader() {
    assertEquals("1.05 to 1.45 bar after 10 min", range.toString());
    assertEquals("105 to 145 kPa after 10 min", range.in(PressureUnit.KPA));
    assertEquals("15.2 to 21.0 psi after 10 min", range.in(PressureUnit.PSI));
  }

  @Test
  void digitsAreThoseThatCount() {
    Message fine = Message.of("%s off", Message.difference(1234));
    assertEquals("0.012 bar off", fine.toString());
    assertEquals("1.2 kPa off", fine.in(PressureUnit.KPA));
    assertEquals("0.18 psi off", fine.in(PressureUnit.PSI));
    Message scale = Message.of("to %s", Message.round(6e5));
    assertEquals("to 6 bar", scale.toString());
    assertEquals("to 600 kPa", scale.in(PressureUnit.KPA));
    Message logged = Message.of("%s", Message.logged(1.4503e5, true));
    assertEquals("1.45 bar", logged.toString());
    assertEquals("1.453 bar", Message.of("%s", Message.logged(1.4526e5, true)).toString());
  }

  @Test
  void pressuresStatedInANameAreFound() {
    Message name =
        Message.stated("leak at 0.1 bar, 5 % of that at 2 bar, flow for each bar over it");
    assertEquals(
        "leak at 0.1 bar, 5 % of that at 2 bar, flow for each bar over it", name.toString());
    assertEquals(
        "leak at 10 kPa, 5 % of that at 200 kPa, flow for each bar over it",
        name.in(PressureUnit.KPA));
    assertEquals("leak at 29 psi", Message.stated("leak at 2 bar").in(PressureUnit.PSI));
  }

  @Test
  void severalStandInARow() {
    assertEquals("a; b", Message.joined(Message.plain(List.of("a", "b"))).toString());
    assertEquals(List.of("a", "b"), Message.inBar(Message.plain(List.of("a", "b"))));
  }

  @Test
  void wordsWithPercentSignsStayAsTheyAre() {
    assertEquals("90 % dry", Message.plain("90 % dry").in(PressureUnit.KPA));
  }

  @Test
  void aMessageStandsInAnother() {
    Message whole = Message.of("It shows %s.", range);
    assertEquals("It shows 105 to 145 kPa after 10 min.", whole.in(PressureUnit.KPA));
  }
}
