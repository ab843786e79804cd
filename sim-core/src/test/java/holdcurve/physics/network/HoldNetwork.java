package holdcurve.physics.network;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.flow.Softplus;
import holdcurve.physics.storage.GasSpring;
import holdcurve.physics.storage.SpringDiaphragm;
import holdcurve.physics.storage.Storage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The hold problem of hold-problem-reference.json put together from the elements and storages that
 * circuits are made of, in the same order of states. Only its pump and its regulator are written
 * here: parts have other laws for those.
 */
public final class HoldNetwork {
  private static final JsonNode P = read().get("parameters");
  private static final Node TANK = Node.fixed("tank", -1, 0);
  private static final Node FEED = Node.inner("feed", 0);
  private static final Node RAIL = Node.inner("rail", 1);
  private static final Node RETURN = Node.inner("return", 2);
  private static final Node[] NODES = {FEED, RAIL, RETURN};

  private HoldNetwork() {}

  private static JsonNode read() {
    try (InputStream in =
        HoldNetwork.class.getResourceAsStream("/reference/hold-problem-reference.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double value(String name) {
    return P.get(name).asDouble();
  }

  /** Flow that a running pump gives against a pressure, as a law of the difference tank − feed. */
  private record PumpFlow(double free, double stall) implements FlowLaw {
    @Override
    public double flow(double difference) {
      double share = difference / stall;
      return free * (1 - share * share);
    }

    @Override
    public double slope(double difference) {
      return -2 * free * difference / (stall * stall);
    }
  }

  /** K w S((p − p_set)/w) φ(p − p_down, L): opening and drive. */
  private record Opening(double coefficient, double set, double width, OrificeLaw drive)
      implements Element {
    @Override
    public String name() {
      return "regulator";
    }

    @Override
    public void addRates(double t, double[] y, double[] rates) {
      double lift = coefficient * width * Softplus.value((RAIL.pressure(y) - set) / width);
      double flow = lift * drive.flow(RAIL.pressure(y) - RETURN.pressure(y));
      RAIL.receive(rates, -flow);
      RETURN.receive(rates, flow);
    }

    @Override
    public void addJacobian(double t, double[] y, double[][] jacobian) {
      double z = (RAIL.pressure(y) - set) / width;
      double difference = RAIL.pressure(y) - RETURN.pressure(y);
      double byDrive = coefficient * width * Softplus.value(z) * drive.slope(difference);
      double byLift = coefficient * Softplus.slope(z) * drive.flow(difference);
      Jacobians.addFlow(jacobian, RAIL, RETURN, RAIL, byLift + byDrive);
      Jacobians.addFlow(jacobian, RAIL, RETURN, RETURN, -byDrive);
    }
  }

  /**
   * @param prime pump on and return open, instead of pump off and return pinched
   */
  public static Network of(boolean prime) {
    List<Element> elements = new ArrayList<>();
    passage(elements, "hose", FEED, RAIL, new OrificeLaw(value("K_h"), value("dp_h")));
    passage(elements, "check valve", FEED, TANK, new LaminarLaw(value("G_c")));
    passage(elements, "injectors", RAIL, TANK, new OrificeLaw(value("K_i"), value("dp_i")));
    passage(elements, "joint", RAIL, TANK, new LaminarLaw(value("G_j")));
    passage(elements, "regulator seat", RAIL, RETURN, new LaminarLaw(value("G_s")));
    OrificeLaw drive = new OrificeLaw(1, value("dp_r"));
    elements.add(new Opening(value("K_r"), value("p_set"), value("w_r"), drive));
    FlowLaw out =
        prime ? new OrificeLaw(value("K_o"), value("dp_o")) : new LaminarLaw(value("G_p"));
    passage(elements, "return hose", RETURN, TANK, out);
    if (prime) {
      passage(elements, "pump", TANK, FEED, new PumpFlow(value("Q_0"), value("p_st")));
    }
    List<NetworkLayout.CreepRow> creep = new ArrayList<>();
    int row = NODES.length;
    for (String branch : List.of("1a", "1b", "2a", "2b")) {
      Node node = branch.startsWith("1") ? FEED : RAIL;
      double compliance = value("c" + branch);
      double time = value("tau" + branch);
      creep.add(new NetworkLayout.CreepRow(node, row, time, compliance));
      elements.add(new CreepElement("creep " + branch, node, row++, compliance, time));
    }
    double[] swelling = new double[NODES.length];
    double[] capacity = new double[NODES.length];
    for (int i = 0; i < NODES.length; i++) {
      double volume = value("V" + (i + 1));
      swelling[i] = value("alpha") * volume;
      capacity[i] = volume / value("K_T") + value("c_hose") * value("L" + (i + 1));
    }
    elements.add(new ThermalElement("temperature", row, value("tau_th"), NODES, swelling));
    elements.add(new GaugeElement("gauge", RAIL, row + 1, value("tau_g")));
    Storage damper = new SpringDiaphragm(value("V_d"), value("p_d"), value("w_d"));
    Storage[][] storages = {{damper}, {GasSpring.trappedAir(value("V_a"), 1)}, {}};
    NetworkLayout layout =
        new NetworkLayout(
            Arrays.asList(NODES),
            Map.of("feed", FEED, "rail", RAIL, "return", RETURN, "tank", TANK),
            creep,
            Map.of(Region.ENGINE, row),
            Map.of(),
            row + 1,
            "rail",
            List.of(),
            row + 2);
    return new Network(layout, elements, capacity, storages, List.of(), false, null);
  }

  private static void passage(
      List<Element> elements, String name, Node from, Node to, FlowLaw law) {
    elements.add(new FlowElement(name, from, to, law));
  }
}
