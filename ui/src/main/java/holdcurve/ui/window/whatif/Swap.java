package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Changes;
import holdcurve.advice.whatif.HoseKind;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.fluid.Fluids;
import holdcurve.physics.part.Hose;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** One thing that may be exchanged for another kind. */
final class Swap {
  /**
   * A kind to choose.
   *
   * @param change what choosing it does
   */
  record Choice(String words, Change change) {}

  private static final Choice AS_IT_IS = new Choice("as it is", Change.none());

  private final String name;
  private final List<Choice> choices;
  private final ObjectProperty<Choice> chosen = new SimpleObjectProperty<>(AS_IT_IS);

  private Swap(String name, List<Choice> others) {
    this.name = name;
    this.choices = new ArrayList<>(List.of(AS_IT_IS));
    choices.addAll(others);
  }

  /** Each hose for another kind, and the filling for another fuel. */
  static List<Swap> of(Circuit circuit) {
    List<Swap> swaps = new ArrayList<>();
    circuit.partsOf(Hose.KIND).forEach(hose -> swaps.add(new Swap(hose.id(), kinds(hose))));
    swaps.add(new Swap("Fuel", fuels(circuit)));
    return swaps;
  }

  private static List<Choice> kinds(Part hose) {
    List<Choice> kinds = new ArrayList<>();
    for (HoseKind kind : HoseKind.values()) {
      kinds.add(new Choice(kind.words(), Changes.hose(hose, kind)));
    }
    return kinds;
  }

  private static List<Choice> fuels(Circuit circuit) {
    return Fluids.ids().stream()
        .filter(id -> !id.equals(circuit.fluid().id()))
        .map(id -> new Choice(id, Changes.fuel(id, Fluids.byId(id).orElseThrow())))
        .toList();
  }

  String name() {
    return name;
  }

  List<Choice> choices() {
    return choices;
  }

  ObjectProperty<Choice> chosenProperty() {
    return chosen;
  }

  void reset() {
    chosen.set(AS_IT_IS);
  }

  /** What the choice does; nothing where it stays as it is. */
  Change change() {
    return chosen.get() == null ? Change.none() : chosen.get().change();
  }
}
