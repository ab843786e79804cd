package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.TankEnd;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.PartEquations;
import holdcurve.physics.network.ValveState;
import java.util.List;

/**
 * The pressure regulator: it spills to the return what the rail has too much.
 *
 * <p>It has hysteresis. Off its seat it passes {@code gain} for each bar over its set pressure and
 * a twentieth of that for each bar over its closing pressure, which lies {@code reseat_drop} below;
 * there it seats. On its seat it lets only its weep past until the pressure rises over the set
 * pressure again. A run follows that by events ({@link ValveState}); a hold alone, which starts
 * with the regulator shutting, takes one law that shuts at the closing pressure. Where it chatters,
 * its inlet swings between the two pressures at which it changes, and a law without hysteresis
 * centred between them stands for the average.
 *
 * <p>Its set pressure counts against the surroundings, or against the intake manifold if it has a
 * reference hose to it ({@code manifold_reference}); a running engine's vacuum then lowers it.
 */
public final class Regulator implements PartEquations {
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
          10,
          1,
          500,
          0.6,
          "flow for each bar over its set pressure",
          "assumed: sound ones rise by 0.05 to 0.5 bar from a trickle to full delivery");
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

  public static final Property MANIFOLD_REFERENCE =
      Property.flag(
          "manifold_reference", false, "whether a hose leads from its cap to the intake manifold");

  public static final Regulator KIND = new Regulator();

  private static final List<Property> PROPERTIES =
      List.of(SET, RESEAT_DROP, GAIN, WEEP, MANIFOLD_REFERENCE);

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
  public boolean isOpen() {
    return false;
  }

  @Override
  public TankEnd tankEnd() {
    return TankEnd.TO;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    Operation operation = network.operation();
    double reference = part.is(MANIFOLD_REFERENCE) ? operation.manifoldPressure() : 0;
    double set = part.value(SET) + reference;
    double closing = set - part.value(RESEAT_DROP);
    ValveState state = operation.valves().get(part.id());
    network.addPassage(part.id() + " seat", part.from(), part.to(), Seats.weep(part.value(WEEP)));
    if (state == ValveState.SEATED) {
      network.addThreshold(part.id(), part.from(), set + STICTION, true, ValveState.FLOWING);
    } else if (state == ValveState.CHATTERING) {
      addLaw(part, network, (closing + set + STICTION) / 2, closing, 0);
      network.addThreshold(part.id(), part.from(), set + 2 * STICTION, true, ValveState.FLOWING);
    } else if (state == ValveState.FLOWING) {
      addLaw(part, network, set, closing, HANG);
      network.addThreshold(part.id(), part.from(), closing, false, ValveState.SEATED);
    } else if (operation.pumpRunning()) {
      addLaw(part, network, set, closing, HANG);
    } else {
      addLaw(part, network, closing, closing, 0);
    }
  }

  private static void addLaw(
      Part part, NetworkBuilder network, double opening, double closing, double hang) {
    double gain = part.value(GAIN);
    network.addElement(
        part.from(),
        part.to(),
        ends ->
            new RegulatorElement(part.id(), ends[0], ends[1], opening, gain, closing, hang * gain));
  }

  /** Share of the opening gradient with which the valve hangs open before it seats: assumed [-]. */
  private static final double HANG = 0.05;

  /** What it takes beyond the set pressure to lift the valve off its seat: assumed, 5 mbar [Pa]. */
  private static final double STICTION = 500;
}
