package holdcurve.physics.fluid;

import java.util.List;
import java.util.Optional;

/** The fluids that files can name. */
public final class Fluids {
  private static final List<String> IDS = List.of("petrol", "petrol-e5", "petrol-e10", "n-heptane");

  private static final List<Fluid> ON_BENCH =
      List.of(
          PureLiquid.nHeptane(),
          CalibrationFluid.iso4113(),
          Petrol.summer(),
          new EthanolBlend(Petrol.summer(), 0.05),
          new EthanolBlend(Petrol.summer(), 0.10));

  private Fluids() {}

  /** What flow benches run with, the likeliest first: fuels, and calibration fluid. */
  public static List<Fluid> onBench() {
    return ON_BENCH;
  }

  /** All ids, in the order in which to offer them. */
  public static List<String> ids() {
    return IDS;
  }

  /** The fluid of that id, petrols as summer grade; empty if there is none. */
  public static Optional<Fluid> byId(String id) {
    return byId(id, Petrol.summer());
  }

  /**
   * @param id one of {@link #ids()}
   * @param grade the petrol, or the petrol part of a blend; not used for n-heptane
   * @return the fluid of that id; empty if there is none
   */
  public static Optional<Fluid> byId(String id, Petrol grade) {
    return Optional.ofNullable(
        switch (id) {
          case "petrol" -> grade;
          case "petrol-e5" -> new EthanolBlend(grade, 0.05);
          case "petrol-e10" -> new EthanolBlend(grade, 0.10);
          case "n-heptane" -> PureLiquid.nHeptane();
          default -> null;
        });
  }
}
