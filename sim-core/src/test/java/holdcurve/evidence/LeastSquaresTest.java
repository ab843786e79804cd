package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Certified values: NIST Statistical Reference Datasets, nonlinear regression (Misra1a, Hahn1,
 * MGH09, BoxBOD, MGH17, Lanczos3, Thurber), given there to 11 digits.
 */
class LeastSquaresTest {
  private static final JsonNode CERTIFIED = Reference.json("nist_strd_certified.json");

  @ParameterizedTest
  @CsvSource({
    "Misra1a,start1", "Misra1a,start2", "Hahn1,start1", "Hahn1,start2", "MGH09,start1",
    "MGH09,start2", "BoxBOD,start2", "MGH17,start1", "MGH17,start2", "Lanczos3,start1",
    "Lanczos3,start2", "Thurber,start1", "Thurber,start2"
  })
  void meetsTheCertifiedValuesToSixDigits(String set, String start) {
    JsonNode expected = CERTIFIED.get(set);
    LeastSquares.Fit fit =
        LeastSquares.fit(new NistModel(set), Reference.numbers(expected.get(start)));
    assertTrue(fit.converged());
    assertSixDigits(Reference.numbers(expected.get("certified")), fit.parameters());
    assertSixDigits(Reference.numbers(expected.get("std_error")), fit.standardErrors());
    assertSixDigits(new double[] {expected.get("rss").asDouble()}, fit.sumOfSquares());
  }

  /** From here the exponential saturates: any large b2 is as good, and the fit must say so. */
  @Test
  void admitsThatTheDataDontDetermineTheParametersOnThePlateauOfBoxBod() {
    JsonNode expected = CERTIFIED.get("BoxBOD");
    LeastSquares.Fit fit =
        LeastSquares.fit(new NistModel("BoxBOD"), Reference.numbers(expected.get("start1")));
    assertTrue(fit.sumOfSquares() > expected.get("rss").asDouble());
    for (double error : fit.standardErrors()) {
      assertTrue(Double.isNaN(error), "standard error " + error);
    }
  }

  private static void assertSixDigits(double[] expected, double... actual) {
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], 5e-7 * Math.abs(expected[i]), "number " + i);
    }
  }
}
