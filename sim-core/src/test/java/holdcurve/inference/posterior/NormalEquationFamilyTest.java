package holdcurve.inference.posterior;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.inference.fit.Conditional;
import holdcurve.inference.fit.NormalEquations;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.noise.Scales;
import holdcurve.inference.ranking.InventedJob;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The short way must give what the plain sums give. */
class NormalEquationFamilyTest {
  private static final JobModel DATA = JobModel.of(InventedJob.of());
  private static final int COLUMNS = 5;
  private static final Random RANDOM = new Random(4);

  private static double[][] drawn() {
    double[][] sensitivities = new double[DATA.residualCount()][];
    for (int i = 0; i < sensitivities.length; i++) {
      sensitivities[i] = RANDOM.doubles(COLUMNS, -2e3, 2e3).toArray();
    }
    return sensitivities;
  }

  @Test
  void sumsAreThoseOfTheSensitivitiesAtThatStep() {
    double[][] base = drawn();
    double[][][] changes = {drawn(), drawn()};
    double[] steps = {0.7, -1.2};
    double[][] sensitivities = new double[base.length][COLUMNS];
    for (int i = 0; i < base.length; i++) {
      for (int c = 0; c < COLUMNS; c++) {
        sensitivities[i][c] =
            base[i][c] + steps[0] * changes[0][i][c] + steps[1] * changes[1][i][c];
      }
    }
    Scales scales = new Scales(900, 1500);
    NormalEquations plain = new NormalEquations(DATA, sensitivities);
    NormalEquations family = new NormalEquationFamily(DATA, base, changes).at(steps);
    double[][] expected = plain.scaled(scales).precision();
    double[][] found = family.scaled(scales).precision();
    for (int j = 0; j < COLUMNS; j++) {
      assertArrayEquals(expected[j], found[j], 1e-9 * expected[j][j]);
    }
    double[] residuals = RANDOM.doubles(base.length, -3e3, 3e3).toArray();
    double[] x = RANDOM.doubles(COLUMNS, -1, 1).toArray();
    Conditional same = family.scaled(scales).about(x, residuals);
    Conditional wanted = plain.scaled(scales).about(x, residuals);
    assertArrayEquals(wanted.mean(), same.mean(), 1e-9);
    assertEquals(wanted.logMarginal(), same.logMarginal(), 1e-9 * Math.abs(wanted.logMarginal()));
  }
}
