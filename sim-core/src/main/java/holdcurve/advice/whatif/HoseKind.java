package holdcurve.advice.whatif;

import holdcurve.physics.circuit.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Kinds of hose as they are sold. How much each stretches is assumed. */
public enum HoseKind {
  SOFT("soft rubber hose", 0.6, 1.5),
  FUEL("plain fuel hose", 0.35, 1),
  BRAIDED("hose with a textile braid", 0.2, 0.8),
  PLASTIC("plastic line", 0.03, 0.3);

  private final String words;
  private final double compliance;
  private final double creep;

  HoseKind(String words, double millilitresPerBarMetre, double creep) {
    this.words = words;
    this.compliance = Unit.MILLILITRE_PER_BAR_METRE.toSi(millilitresPerBarMetre);
    this.creep = creep;
  }

  /** In plain words. */
  public String words() {
    return words;
  }

  /** What it takes up at once [m³/(Pa·m)]. */
  double compliance() {
    return compliance;
  }

  /** Further stretch beside that of a usual hose [-]. */
  double creep() {
    return creep;
  }

  /** The name in commands. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Ids of all kinds. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(HoseKind::id).toList();
  }

  public static Optional<HoseKind> byId(String id) {
    return Arrays.stream(values()).filter(kind -> kind.id().equals(id)).findFirst();
  }
}
