package holdcurve.training;

import holdcurve.common.message.PartName;
import java.util.List;

/** Something that can be done to a car to find out more. */
public sealed interface Step {
  /** Short name, unique in an exercise, such as {@code clamp-feed-hose}. */
  String id();

  /** In plain words. */
  String words();

  /** What it costs: common practice, no source [min]. */
  double minutes();

  /**
   * Prime, stop the pump, watch the needle.
   *
   * @param clamped hoses that are clamped a few seconds after the pump stops
   * @param watched for how long [min]
   */
  record Hold(List<String> clamped, double watched) implements Step {
    private static final double PREPARE = 3;
    private static final double CLAMP = 2;

    public Hold {
      clamped = List.copyOf(clamped);
    }

    @Override
    public String id() {
      return clamped.isEmpty() ? "hold" : "clamp-" + String.join("+", clamped);
    }

    @Override
    public String words() {
      return clamped.isEmpty()
          ? "Prime and watch the needle"
          : "Prime, clamp the " + PartName.all(clamped) + ", and watch the needle";
    }

    @Override
    public double minutes() {
      return PREPARE + CLAMP * clamped.size() + watched;
    }
  }

  /**
   * Lift injectors with the circuit under pressure and count drops.
   *
   * @param part id of the injectors
   * @param counted for how long [min]
   */
  record CountDrops(String part, double counted) implements Step {
    private static final double LIFT_AND_REFIT = 15;

    @Override
    public String id() {
      return "lift-" + part;
    }

    @Override
    public String words() {
      return "Lift the " + PartName.of(part) + " and count drops";
    }

    @Override
    public double minutes() {
      return LIFT_AND_REFIT + counted;
    }
  }

  /** Look at every joint under pressure. */
  record LookAtJoints() implements Step {
    @Override
    public String id() {
      return "look-at-joints";
    }

    @Override
    public String words() {
      return "Prime, wipe the joints and look for wet ones";
    }

    @Override
    public double minutes() {
      return 6;
    }
  }

  /** Pull the thin hose off the regulator. */
  record LookIntoReferenceHose() implements Step {
    @Override
    public String id() {
      return "look-into-thin-hose";
    }

    @Override
    public String words() {
      return "Pull the thin hose off the regulator and look for fuel";
    }

    @Override
    public double minutes() {
      return 3;
    }
  }
}
