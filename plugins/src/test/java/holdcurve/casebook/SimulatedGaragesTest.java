package holdcurve.casebook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.prior.FaultPriors;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Learning a garage's rates from confirmed cases helps where they are not the shipped ones, and
 * does next to no harm where they are. The bank has seeds 90000 to 90299; the weight of the shipped
 * rates was chosen on another bank, with other garages.
 */
class SimulatedGaragesTest {
  private static final int GARAGES = 200;
  private static final long FIRST_SEED = 1;

  /** Nat, on average over the garages. */
  private static final double WORST = -0.01;

  private static double[] gains(double spread) throws IOException {
    try (InputStream in =
        SimulatedGaragesTest.class.getResourceAsStream("/casebook/ranked-bank.csv")) {
      String csv = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      double[] gains =
          new SimulatedGarages(csv).gains(FIRST_SEED, GARAGES, spread, FaultPriors.weight());
      System.out.println(SimulatedGarages.words(spread, FaultPriors.weight(), gains));
      return gains;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.7, 1})
  void neverMuchWorseThanTheShippedRates(double spread) throws IOException {
    for (double gain : gains(spread)) {
      assertTrue(gain > WORST, gain + " nat");
    }
  }

  @Test
  void betterAndBetterWhereTheGarageIsUnlikeOthers() throws IOException {
    double[] gains = gains(0.7);
    assertTrue(gains[0] > 0 && gains[1] > gains[0] && gains[2] > gains[1]);
  }
}
