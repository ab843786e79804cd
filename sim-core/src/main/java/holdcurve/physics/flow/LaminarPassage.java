package holdcurve.physics.flow;

import java.util.Locale;

/**
 * A fine passage whose geometry gives a laminar conductance, as long as the flow is slow enough.
 */
public interface LaminarPassage {
  /** Reynolds number on hydraulic diameter above which laminar flow isn't relied on [-]. */
  double LAMINAR_LIMIT = 2000;

  /**
   * @param viscosity dynamic [Pa·s]
   * @return laminar conductance [m³/(s·Pa)]
   */
  double conductance(double viscosity);

  /**
   * Reynolds number on hydraulic diameter.
   *
   * @param flow [m³/s]
   * @param density [kg/m³]
   * @param viscosity dynamic [Pa·s]
   * @return [-]
   */
  double reynolds(double flow, double density, double viscosity);

  /**
   * The laminar law, refused if it would be used where it doesn't hold.
   *
   * @param density [kg/m³]
   * @param viscosity dynamic [Pa·s]
   * @param pressure largest pressure difference it is meant for [Pa]
   * @throws IllegalArgumentException if the Reynolds number there exceeds {@link #LAMINAR_LIMIT}
   */
  default LaminarLaw laminar(double density, double viscosity, double pressure) {
    LaminarLaw law = new LaminarLaw(conductance(viscosity));
    double reynolds = reynolds(law.flow(pressure), density, viscosity);
    if (!(reynolds <= LAMINAR_LIMIT)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "at %.0f Pa the laminar law would mean a Reynolds number of %.0f [-], above %.0f;"
                  + " use a pipe or orifice law for %s",
              pressure,
              reynolds,
              LAMINAR_LIMIT,
              this));
    }
    return law;
  }
}
