package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * A straight round tube: Hagen–Poiseuille, Q = π r⁴ Δp/(8 µ L).
 *
 * @param radius [m]
 * @param length [m]
 */
public record TubePassage(double radius, double length) implements LaminarPassage {
  /** Sharp entrance 0.5 and exit 1.0, the usual handbook pair [-]. */
  private static final double END_LOSSES = 1.5;

  /** Share of the pressure lost at the ends that the laminar law may leave out [-]; assumed. */
  private static final double NEGLIGIBLE_SHARE = 0.05;

  public TubePassage {
    Require.positive(radius, "radius", "m");
    Require.positive(length, "length", "m");
  }

  @Override
  public double conductance(double viscosity) {
    double square = radius * radius;
    return Math.PI
        * square
        * square
        / (8 * Require.positive(viscosity, "viscosity", "Pa·s") * length);
  }

  @Override
  public double reynolds(double flow, double density, double viscosity) {
    return 2 * density * Math.abs(flow) / (Math.PI * radius * viscosity);
  }

  /**
   * The laminar law where it holds up to the given pressure, else a smooth pipe with entrance and
   * exit losses. Handed over above {@link #LAMINAR_LIMIT}, and also where the ends would take more
   * than 5 % of the pressure, which in short tubes happens first.
   *
   * @param density [kg/m³]
   * @param viscosity dynamic [Pa·s]
   * @param pressure largest pressure difference expected [Pa]
   */
  public FlowLaw law(double density, double viscosity, double pressure) {
    LaminarLaw laminar = new LaminarLaw(conductance(viscosity));
    double flow = laminar.flow(pressure);
    double speed = flow / (Math.PI * radius * radius);
    boolean endsMatter = END_LOSSES * density * speed * speed / 2 > NEGLIGIBLE_SHARE * pressure;
    if (endsMatter || reynolds(flow, density, viscosity) > LAMINAR_LIMIT) {
      return new PipeLaw(new Pipe(2 * radius, length, 0, END_LOSSES), density, viscosity);
    }
    return laminar;
  }
}
