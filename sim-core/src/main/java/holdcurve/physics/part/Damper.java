package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import holdcurve.physics.storage.SpringDiaphragm;
import java.util.List;

/**
 * Pulsation damper: a spring-loaded diaphragm between two stops.
 *
 * <p>Sits at one connection point. It takes up most around {@code centre} and little near its
 * stops; a damper whose centre lies far from the hold pressure hardly softens the hold.
 */
public final class Damper implements PartEquations {
  public static final Property STROKE_VOLUME =
      Property.of(
          "stroke_volume",
          Unit.MILLILITRE,
          1.2,
          0.01,
          50,
          0.5,
          "what the diaphragm displaces between its stops",
          "assumed");
  public static final Property CENTRE =
      Property.of("centre", Unit.BAR, 1.8, 0.1, 10, 0.2, "pressure at mid-stroke", "assumed");
  public static final Property WIDTH =
      Property.of(
          "width",
          Unit.BAR,
          0.9,
          0.05,
          5,
          0.5,
          "pressure from mid-stroke towards a stop",
          "assumed");

  public static final Property HARDNESS =
      Property.of(
          "stop_hardness",
          Unit.NONE,
          4,
          1,
          20,
          0.6,
          "2 where the stops take it up gradually, 10 where it meets them at once",
          "assumed");

  public static final Damper KIND = new Damper();

  private static final List<Property> PROPERTIES = List.of(STROKE_VOLUME, CENTRE, WIDTH, HARDNESS);

  private Damper() {}

  @Override
  public String id() {
    return "damper";
  }

  @Override
  public String title() {
    return "Damper";
  }

  @Override
  public Ports ports() {
    return Ports.ONE;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    network.addStorage(
        part.from(),
        new SpringDiaphragm(
            part.value(STROKE_VOLUME),
            part.value(CENTRE),
            part.value(WIDTH),
            part.value(HARDNESS)));
  }
}
