package holdcurve.ui.window.circuit;

import holdcurve.inference.answer.Suspect;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.WorkModel;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableBooleanValue;

/** The circuit laid out, the part that is edited, and the parts that a suspect points at. */
public final class CircuitModel {
  private final OpenJobModel jobs;
  private final FaultsModel faults;
  private final ObjectProperty<Drawing> drawing = new SimpleObjectProperty<>();
  private final StringProperty chosen = new SimpleStringProperty("");
  private final ObjectProperty<Set<String>> lit = new SimpleObjectProperty<>(Set.of());
  private final StringProperty problem = new SimpleStringProperty("");
  private Circuit drawn;
  private WorkModel.Item looking;

  public CircuitModel(OpenJobModel jobs, FaultsModel faults) {
    this.jobs = jobs;
    this.faults = faults;
    jobs.jobProperty().addListener((property, before, now) -> draw(now));
    jobs.ranking().chosenProperty().addListener((property, before, now) -> light(now));
    draw(jobs.jobProperty().get());
    light(jobs.ranking().chosenProperty().get());
  }

  private void draw(Job job) {
    Circuit circuit = job == null ? null : job.circuit();
    if (circuit != drawn) {
      drawn = circuit;
      drawing.set(circuit == null ? null : CircuitLayout.of(circuit));
      if (chosenPart().isEmpty()) {
        chosen.set("");
      }
    }
  }

  private void light(Suspect suspect) {
    if (looking != null) {
      looking.cancel();
    }
    if (suspect == null || suspect.isNone() || drawn == null) {
      lit.set(Set.of());
      return;
    }
    Circuit circuit = drawn;
    looking =
        jobs.work()
            .start(
                "Looking up the place", progress -> faults.parts(circuit, suspect.id()), lit::set);
  }

  /** Whether what is marked follows from a ranking that is out of date. */
  ObservableBooleanValue litOutdated() {
    return jobs.ranking().outdatedProperty().and(lit.isNotEqualTo(Set.of()));
  }

  /** Ranks the job as it is now. */
  void rank() {
    jobs.rank();
  }

  /** The part that is edited; empty for none. */
  Optional<Part> chosenPart() {
    return part(chosen.get());
  }

  private Optional<Part> part(String id) {
    return drawn == null
        ? Optional.empty()
        : drawn.parts().stream().filter(part -> part.id().equals(id)).findFirst();
  }

  /** Goes on by {@code step} parts in circuit order, round at the ends. */
  void go(int step) {
    if (drawn != null && !drawn.parts().isEmpty()) {
      int now = chosenPart().map(drawn.parts()::indexOf).orElse(step > 0 ? -1 : 0);
      int next = Math.floorMod(now + step, drawn.parts().size());
      chosen.set(drawn.parts().get(next).id());
    }
  }

  /**
   * Sets a property of the chosen part to what was typed.
   *
   * @param typed in the unit shown; empty to leave it to its default
   * @return whether it could be used; if not, {@link #problemProperty} says what would be right
   */
  boolean set(Property property, String typed) {
    return set(chosen.get(), property, typed);
  }

  /** Does so for the part with that id. */
  boolean set(String id, Property property, String typed) {
    Part part = part(id).orElse(null);
    if (part == null) {
      return false;
    }
    if (typed.isBlank()) {
      replace(part, property, OptionalDouble.empty());
      return true;
    }
    OptionalDouble value = parse(property, typed);
    if (value.isEmpty() || !property.accepts(value.getAsDouble())) {
      problem.set(
          PartWords.name(property)
              + " of "
              + part.id()
              + ": '"
              + typed.strip()
              + "' can't be; give "
              + PartWords.limits(property, pressures())
              + ".");
      return false;
    }
    if (!typed.strip().equals(PartWords.value(part, property, pressures()))
        || !part.states(property)) {
      replace(part, property, value);
    }
    return true;
  }

  /** Sets a yes/no property of the chosen part; a hose that is clamped in a hold can be clamped. */
  void set(Property flag, boolean value) {
    Part part = chosenPart().orElse(null);
    if (part == null) {
      return;
    }
    Optional<String> hold = value || flag != Hose.CLAMPABLE ? Optional.empty() : clampedIn(part);
    if (hold.isPresent()) {
      problem.set(
          part.id()
              + " was clamped in hold '"
              + hold.get()
              + "'; take that clamp off on page Hold tests first.");
      return;
    }
    replace(part, flag, OptionalDouble.of(value ? 1 : 0));
  }

  private Optional<String> clampedIn(Part hose) {
    return jobs.jobProperty().get().tests().stream()
        .filter(test -> test.clamped().contains(hose.id()))
        .map(HoldTest::id)
        .findFirst();
  }

  private OptionalDouble parse(Property property, String typed) {
    try {
      double shown = Double.parseDouble(typed.strip().replace(',', '.'));
      return OptionalDouble.of(
          PartWords.isPressure(property)
              ? pressures().unit().toPascal(shown)
              : property.unit().toSi(shown));
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  private void replace(Part part, Property property, OptionalDouble value) {
    problem.set("");
    Map<Property, Double> stated = new HashMap<>();
    for (Property one : part.kind().properties()) {
      if (part.states(one)) {
        stated.put(one, part.value(one));
      }
    }
    if (value.isPresent()) {
      stated.put(property, value.getAsDouble());
    } else {
      stated.remove(property);
    }
    Part changed = Part.of(part.kind(), part.id(), part.from(), part.to(), stated);
    boolean same = changed.equals(part) && changed.states(property) == part.states(property);
    if (!same) {
      jobs.change(
          PartWords.name(property).toLowerCase(java.util.Locale.ROOT) + " of " + part.id(),
          job ->
              JobEdits.withCircuit(
                  job, job.circuit().map(one -> one.id().equals(part.id()) ? changed : one)));
    }
  }

  /** The circuit laid out; null for none. */
  ObjectProperty<Drawing> drawingProperty() {
    return drawing;
  }

  /** Id of the part that is edited; empty for none. */
  StringProperty chosenProperty() {
    return chosen;
  }

  /** Ids of the parts to look at for the suspect that is looked at. */
  ObjectProperty<Set<String>> litProperty() {
    return lit;
  }

  /** The suspect that is looked at; null for none. */
  ObjectProperty<Suspect> suspectProperty() {
    return jobs.ranking().chosenProperty();
  }

  /** What was wrong with what was typed; empty for nothing. */
  StringProperty problemProperty() {
    return problem;
  }

  PressureFormat pressures() {
    return jobs.pressures();
  }
}
