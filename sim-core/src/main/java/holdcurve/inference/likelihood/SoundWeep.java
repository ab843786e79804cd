package holdcurve.inference.likelihood;

import holdcurve.inference.prior.PriorFile;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Seats;
import holdcurve.record.limit.PassLimit;

/**
 * How much the seats of a sound circuit may weep. A circuit is called sound because it stays above
 * its pass limit, so what its seats let past in that time is less than what it gives up between the
 * closing pressure of its regulator and the limit, hose stretch taken off: that is the room for
 * weeps. A stiff circuit has little of it, and its seats must be the tighter.
 */
public final class SoundWeep {
  private static final PriorFile PRIORS = PriorFile.section("sound");
  private static final double USUAL_SHARE = PRIORS.value("usual_share");
  private static final double SHARPNESS = PRIORS.value("sharpness");
  private static final double GRANTED = PRIORS.value("granted");
  private static final double LEAST_ROOM = PRIORS.value("least_room");

  private final PassLimit limit;
  private final double prime;
  private final double scale;

  /**
   * @param circuit as described, its weeps the usual ones
   * @param limit what a sound one stays above
   * @param prime how long the pump runs before the hold [s]
   */
  public SoundWeep(Circuit circuit, PassLimit limit, double prime) {
    this.limit = limit;
    this.prime = prime;
    scale = Math.min(1, USUAL_SHARE * room(circuit) / lost(circuit));
  }

  /** Room for weeps until the time of the pass limit [m³]. */
  double room(Circuit circuit) {
    StoredFuel stored = new StoredFuel(circuit);
    double shut = shut(circuit);
    double given = stored.between(Math.min(limit.pressure(), 0.95 * shut), shut);
    double stretch = stored.creep(shut, prime, limit.time());
    return GRANTED * Math.max(LEAST_ROOM * given, given - stretch);
  }

  private static double shut(Circuit circuit) {
    return circuit.partsOf(Regulator.KIND).stream()
        .mapToDouble(r -> r.value(Regulator.SET) - r.value(Regulator.RESEAT_DROP))
        .findFirst()
        .orElse(Seats.TEST_PRESSURE);
  }

  /** What the weeps of a circuit let past until the time of the limit [m³]. */
  private double lost(Circuit circuit) {
    double flow = 0;
    for (Part part : circuit.parts()) {
      flow += weep(part);
    }
    double mean = (shut(circuit) + limit.pressure()) / 2;
    return flow * limit.time() * mean / Seats.TEST_PRESSURE;
  }

  private static double weep(Part part) {
    if (part.kind() == CheckValve.KIND) {
      return part.value(CheckValve.WEEP);
    }
    if (part.kind() == Regulator.KIND) {
      return part.value(Regulator.WEEP);
    }
    if (part.kind() == ColdStartInjector.KIND) {
      return part.value(ColdStartInjector.WEEP);
    }
    return part.kind() == Injector.KIND
        ? part.value(Injector.WEEP) * part.value(Injector.COUNT)
        : 0;
  }

  /**
   * A circuit with as much weep as leaves it sound.
   *
   * @param circuit its weeps in units of the usual ones of the described circuit
   */
  public Circuit within(Circuit circuit) {
    return within(circuit, room(circuit));
  }

  /**
   * Likewise.
   *
   * @param room of that circuit [m³]
   */
  Circuit within(Circuit circuit, double room) {
    return weeping(circuit, factor(circuit, room));
  }

  /**
   * By how much all weeps of a circuit are to be multiplied.
   *
   * @param circuit its weeps in units of the usual ones of the described circuit
   * @param room of that circuit [m³]
   */
  private double factor(Circuit circuit, double room) {
    double share = scale * lost(circuit) / room;
    return scale / Math.pow(1 + Math.pow(share, SHARPNESS), 1 / SHARPNESS);
  }

  /** The same circuit with all weeps multiplied. */
  private static Circuit weeping(Circuit circuit, double factor) {
    return circuit.map(part -> weeping(part, factor));
  }

  private static Part weeping(Part part, double factor) {
    if (part.kind() == CheckValve.KIND) {
      return part.with(CheckValve.WEEP, factor * part.value(CheckValve.WEEP));
    }
    if (part.kind() == Regulator.KIND) {
      return part.with(Regulator.WEEP, factor * part.value(Regulator.WEEP));
    }
    if (part.kind() == ColdStartInjector.KIND) {
      return part.with(ColdStartInjector.WEEP, factor * part.value(ColdStartInjector.WEEP));
    }
    return part.kind() == Injector.KIND
        ? part.with(Injector.WEEP, factor * part.value(Injector.WEEP))
        : part;
  }
}
