package holdcurve.ui.window.holdtests;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.job.PressureFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What can be noted beside the gauge, and what each needs to be said. */
enum FindingForm {
  WET("Part or joint is wet", true, List.of()),
  WET_AGAIN("Wiped and primed: wet again", true, List.of()),
  DRY("Part or joint is dry", true, List.of()),
  STILL_DRY("Wiped and primed: still dry", true, List.of()),
  ALL_DRY("Every joint is dry", false, List.of()),
  DROPS("Drops at lifted injectors", true, List.of("drops", "minutes")),
  FUEL_IN_HOSE("Fuel in the regulator's thin hose", false, List.of()),
  NO_FUEL_IN_HOSE("No fuel in the regulator's thin hose", false, List.of()),
  DRAWN_OFF("Fuel drawn off at the tee", false, List.of("mL", "from", "to"));

  private static final double DRAWING_S = 20;
  private static final double MOST = 10_000;

  private final String title;
  private final boolean aboutPart;
  private final List<String> fields;

  FindingForm(String title, boolean aboutPart, List<String> fields) {
    this.title = title;
    this.aboutPart = aboutPart;
    this.fields = fields;
  }

  /** What to beware of before it is looked for. */
  String caution() {
    return switch (this) {
      case WET, WET_AGAIN, DRY, STILL_DRY, ALL_DRY -> StepCautions.LOOK;
      case DROPS -> StepCautions.DROPS;
      case FUEL_IN_HOSE, NO_FUEL_IN_HOSE -> StepCautions.THIN_HOSE;
      case DRAWN_OFF -> StepCautions.DRAW_OFF;
    };
  }

  String title() {
    return title;
  }

  /** Names of the numbers it needs. */
  List<String> fields() {
    return fields;
  }

  /** Ids of the parts it can be about; empty where it is about none. */
  List<String> parts(Circuit circuit) {
    if (!aboutPart) {
      return List.of();
    }
    return circuit.parts().stream()
        .filter(part -> this == DROPS ? drips(part) : part.kind().ports() != Ports.PLACE)
        .map(Part::id)
        .toList();
  }

  private static boolean drips(Part part) {
    return part.kind() == Injector.KIND || part.kind() == ColdStartInjector.KIND;
  }

  /**
   * The finding.
   *
   * @param part chosen; not used where it is about none
   * @param typed one for each of {@link #fields}
   * @return empty if a number can't be used
   */
  Optional<Finding> finding(String part, List<String> typed, PressureFormat pressures) {
    try {
      return Optional.of(make(part, typed, pressures));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Finding make(String part, List<String> typed, PressureFormat pressures) {
    return switch (this) {
      case WET -> JointLook.of(part, true);
      case WET_AGAIN -> JointLook.of(part, true).afterWiping();
      case DRY -> JointLook.of(part, false);
      case STILL_DRY -> JointLook.of(part, false).afterWiping();
      case ALL_DRY -> JointLook.allDry();
      case DROPS -> DropCount.ofAll(part, (int) number(typed.get(0)), 60 * number(typed.get(1)));
      case FUEL_IN_HOSE -> new ReferenceHoseLook(true, Moment.PRIMED);
      case NO_FUEL_IN_HOSE -> new ReferenceHoseLook(false, Moment.PRIMED);
      case DRAWN_OFF ->
          new DrawOff(
              1e-6 * number(typed.get(0)),
              pressures.parse(typed.get(1)).orElseThrow(IllegalArgumentException::new),
              pressures.parse(typed.get(2)).orElseThrow(IllegalArgumentException::new),
              DRAWING_S,
              Set.of());
    };
  }

  private static double number(String typed) {
    double number = Double.parseDouble(typed.strip().replace(',', '.'));
    if (!(number >= 0 && number <= MOST)) {
      throw new IllegalArgumentException(typed);
    }
    return number;
  }
}
