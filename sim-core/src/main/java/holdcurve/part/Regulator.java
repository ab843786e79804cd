package holdcurve.part;

import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;
import holdcurve.circuit.Ports;
import holdcurve.circuit.Property;
import holdcurve.circuit.Unit;
import holdcurve.model.NetworkBuilder;
import java.util.List;

/** The pressure regulator: it spills to the return what the rail has too much. */
public final class Regulator implements PartKind {
  public static final Property SET =
      Property.of(
          "set", Unit.BAR, 2.5, 0.5, 6, 0.06, "pressure it holds while fuel flows", "assumed");
  public static final Property RESEAT_DROP =
      Property.of(
          "reseat_drop",
          Unit.BAR,
          0.02,
          0,
          3,
          0.7,
          "how far below its set pressure it shuts",
          "assumed");
  public static final Property GAIN =
      Property.of(
          "gain",
          Unit.LITRE_PER_MINUTE_BAR,
          30,
          1,
          500,
          0.5,
          "flow for each bar over its set pressure",
          "assumed");
  public static final Property WEEP =
      Property.of(
          "weep",
          Unit.MILLILITRE_PER_MINUTE,
          0.015,
          0,
          50,
          0.8,
          "flow past its healthy seat at 2 bar",
          "assumed");

  public static final Regulator KIND = new Regulator();

  private static final List<Property> PROPERTIES = List.of(SET, RESEAT_DROP, GAIN, WEEP);

  private Regulator() {}

  @Override
  public String id() {
    return "regulator";
  }

  @Override
  public String title() {
    return "Regulator";
  }

  @Override
  public Ports ports() {
    return Ports.TWO;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    double opening = part.value(SET);
    if (!network.operation().pumpRunning()) {
      opening -= part.value(RESEAT_DROP);
    }
    double closing = opening;
    network.addElement(
        part.from(),
        part.to(),
        ends -> new RegulatorElement(part.id(), ends[0], ends[1], closing, part.value(GAIN)));
    network.addPassage(part.id() + " seat", part.from(), part.to(), Seats.weep(part.value(WEEP)));
  }
}
