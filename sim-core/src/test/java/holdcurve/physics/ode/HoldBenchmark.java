package holdcurve.physics.ode;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;

/**
 * Pressure hold of a feed line (1), a rail (2) and a return segment (3), with creep of two hoses,
 * cooling and a lagging gauge: nine states, time constants from 1 ms to 2200 s. All numbers are
 * invented; end values and how they were made stand in hold-problem-reference.json.
 *
 * <p>States: p1 p2 p3 [Pa], v1a v1b v2a v2b [m³], θ above surroundings [K], gauge [Pa].
 */
final class HoldBenchmark implements StiffEquations {
  static final JsonNode DATA = ReferenceSolution.read("hold-problem-reference.json");
  static final double[] FLOOR = ReferenceSolution.doubles(DATA.get("floor"));
  static final double[] TIMES = ReferenceSolution.doubles(DATA.get("output_times_s"));
  static final double SWITCH = DATA.get("switch_time_s").asDouble();

  private final boolean prime;
  private final double pAtm = parameter("p_atm");
  private final double alphaV1 = parameter("alpha") * parameter("V1");
  private final double alphaV2 = parameter("alpha") * parameter("V2");
  private final double alphaV3 = parameter("alpha") * parameter("V3");
  private final double stiff1 = stiffness("1");
  private final double stiff2 = stiffness("2");
  private final double c3 = stiffness("3");
  private final double damper = parameter("V_d") / (2 * parameter("w_d"));
  private final double pd = parameter("p_d");
  private final double wd = parameter("w_d");
  private final double air = parameter("V_a") * pAtm;
  private final double[] creep = {
    parameter("c1a"), parameter("c1b"), parameter("c2a"), parameter("c2b")
  };
  private final double[] tau = {
    parameter("tau1a"), parameter("tau1b"), parameter("tau2a"), parameter("tau2b")
  };
  private final double tauTh = parameter("tau_th");
  private final double tauG = parameter("tau_g");
  private final double kh = parameter("K_h");
  private final double dph = parameter("dp_h");
  private final double ki = parameter("K_i");
  private final double dpi = parameter("dp_i");
  private final double gc = parameter("G_c");
  private final double gj = parameter("G_j");
  private final double gs = parameter("G_s");
  private final double gp = parameter("G_p");
  private final double kr = parameter("K_r");
  private final double pSet = parameter("p_set");
  private final double wr = parameter("w_r");
  private final double dpr = parameter("dp_r");
  private final double ko = parameter("K_o");
  private final double dpo = parameter("dp_o");
  private final double q0 = parameter("Q_0");
  private final double pst = parameter("p_st");
  private final double[] slope = new double[9];

  /**
   * @param prime pump on and return open, instead of pump off and return pinched
   */
  HoldBenchmark(boolean prime) {
    this.prime = prime;
  }

  private static double parameter(String name) {
    return DATA.get("parameters").get(name).asDouble();
  }

  private static double stiffness(String region) {
    return parameter("V" + region) / parameter("K_T")
        + parameter("c_hose") * parameter("L" + region);
  }

  static double[] initial(String variant) {
    return ReferenceSolution.doubles(DATA.get("variants").get(variant).get("y0"));
  }

  static double[][] published(String variant) {
    return ReferenceSolution.table(DATA.get("variants").get(variant).get("y"));
  }

  /** Largest |y − reference| / (|reference| + floor) over states and output times after 0. */
  static double error(String variant, double[][] rows) {
    double[][] reference = published(variant);
    double error = 0;
    for (int k = 1; k < rows.length; k++) {
      for (int i = 0; i < FLOOR.length; i++) {
        double allowed = Math.abs(reference[k][i]) + FLOOR[i];
        error = Math.max(error, Math.abs(rows[k][i] - reference[k][i]) / allowed);
      }
    }
    return error;
  }

  @Override
  public int getDimension() {
    return 9;
  }

  private static double orifice(double d, double width) {
    return d / Math.sqrt(Math.sqrt(d * d + width * width));
  }

  private static double orificeSlope(double d, double width) {
    double square = d * d + width * width;
    return (0.5 * d * d + width * width) / (square * Math.sqrt(Math.sqrt(square)));
  }

  private static double softplus(double z) {
    return z > 0 ? z + Math.log1p(Math.exp(-z)) : Math.log1p(Math.exp(z));
  }

  private static double softplusSlope(double z) {
    return 1 / (1 + Math.exp(-z));
  }

  private double compliance1(double p1) {
    double z = (p1 - pd) / wd;
    double wide = 1 + z * z;
    return stiff1 + damper / (wide * Math.sqrt(wide));
  }

  private double compliance1Slope(double p1) {
    double z = (p1 - pd) / wd;
    double wide = 1 + z * z;
    return -3 * z * damper / (wide * wide * Math.sqrt(wide)) / wd;
  }

  private double compliance2(double p2) {
    return stiff2 + air / ((pAtm + p2) * (pAtm + p2));
  }

  private double compliance2Slope(double p2) {
    double absolute = pAtm + p2;
    return -2 * air / (absolute * absolute * absolute);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] f) {
    double p1 = y[0];
    double p2 = y[1];
    double p3 = y[2];
    f[3] = (creep[0] * p1 - y[3]) / tau[0];
    f[4] = (creep[1] * p1 - y[4]) / tau[1];
    f[5] = (creep[2] * p2 - y[5]) / tau[2];
    f[6] = (creep[3] * p2 - y[6]) / tau[3];
    f[7] = -y[7] / tauTh;
    f[8] = (p2 - y[8]) / tauG;
    double q12 = kh * orifice(p1 - p2, dph);
    double opening = kr * wr * softplus((p2 - pSet) / wr);
    double qr = opening * orifice(p2 - p3, dpr) + gs * (p2 - p3);
    double qo = prime ? ko * orifice(p3, dpo) : gp * p3;
    double qp = prime ? q0 * (1 - (p1 / pst) * (p1 / pst)) : 0;
    f[0] = (qp - q12 - gc * p1 - f[3] - f[4] + alphaV1 * f[7]) / compliance1(p1);
    double out2 = ki * orifice(p2, dpi) + gj * p2 + qr;
    f[1] = (q12 - out2 - f[5] - f[6] + alphaV2 * f[7]) / compliance2(p2);
    f[2] = (qr - qo + alphaV3 * f[7]) / c3;
  }

  /** Long because each of the three pressure rows is written out. */
  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    computeDerivatives(t, y, slope);
    for (double[] row : dfdy) {
      Arrays.fill(row, 0);
    }
    for (int k = 0; k < 4; k++) {
      dfdy[3 + k][k / 2] = creep[k] / tau[k];
      dfdy[3 + k][3 + k] = -1 / tau[k];
    }
    dfdy[7][7] = -1 / tauTh;
    dfdy[8][1] = 1 / tauG;
    dfdy[8][8] = -1 / tauG;
    double p1 = y[0];
    double p2 = y[1];
    double p3 = y[2];
    double through12 = kh * orificeSlope(p1 - p2, dph);
    double pumpSlope = prime ? -2 * q0 * p1 / (pst * pst) : 0;
    double c1 = compliance1(p1);
    dfdy[0][0] =
        (pumpSlope - through12 - gc - creep[0] / tau[0] - creep[1] / tau[1]) / c1
            - slope[0] * compliance1Slope(p1) / c1;
    dfdy[0][1] = through12 / c1;
    dfdy[0][3] = 1 / (tau[0] * c1);
    dfdy[0][4] = 1 / (tau[1] * c1);
    dfdy[0][7] = -alphaV1 / (tauTh * c1);
    double z = (p2 - pSet) / wr;
    double opening = kr * wr * softplus(z);
    double returnBy3 = -opening * orificeSlope(p2 - p3, dpr) - gs;
    double returnBy2 = kr * softplusSlope(z) * orifice(p2 - p3, dpr) - returnBy3;
    double c2 = compliance2(p2);
    double leakSlope = ki * orificeSlope(p2, dpi) + gj;
    dfdy[1][0] = through12 / c2;
    dfdy[1][1] =
        (-through12 - leakSlope - returnBy2 - creep[2] / tau[2] - creep[3] / tau[3]) / c2
            - slope[1] * compliance2Slope(p2) / c2;
    dfdy[1][2] = -returnBy3 / c2;
    dfdy[1][5] = 1 / (tau[2] * c2);
    dfdy[1][6] = 1 / (tau[3] * c2);
    dfdy[1][7] = -alphaV2 / (tauTh * c2);
    double outSlope = prime ? ko * orificeSlope(p3, dpo) : gp;
    dfdy[2][1] = returnBy2 / c3;
    dfdy[2][2] = (returnBy3 - outSlope) / c3;
    dfdy[2][7] = -alphaV3 / (tauTh * c3);
  }
}
