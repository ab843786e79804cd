package holdcurve.ui.window.circuit;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PartName;
import holdcurve.file.CircuitReader;
import holdcurve.file.CircuitWriter;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.PartKinds;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.WorkModel;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
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
  private WorkModel.Item lookingUp;
  private final ReadOnlyObjectWrapper<Map<String, Set<String>>> ofParts =
      new ReadOnlyObjectWrapper<>(Map.of());

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
      lookUpFaults(circuit);
    }
  }

  private void lookUpFaults(Circuit circuit) {
    if (lookingUp != null) {
      lookingUp.cancel();
    }
    if (circuit != null) {
      lookingUp =
          jobs.work()
              .start(
                  "Looking up the faults of the parts",
                  progress -> faults.faultsOfParts(circuit),
                  ofParts::set);
    }
  }

  /** Faults that can sit at one part alone, by its id. */
  ReadOnlyObjectProperty<Map<String, Set<String>>> ofPartsProperty() {
    return ofParts.getReadOnlyProperty();
  }

  /** Whether the chosen part is said to be new. */
  boolean isNew() {
    Set<String> here = ofParts.get().getOrDefault(chosen.get(), Set.of());
    Job job = jobs.jobProperty().get();
    return job != null
        && !here.isEmpty()
        && here.stream().allMatch(id -> job.priors().getOrDefault(id, 1.0) <= FaultPriors.NEW_PART);
  }

  /** Says of the chosen part that it is new, or isn't: its faults are then rarer than usual. */
  void setNew(boolean now) {
    Set<String> here = ofParts.get().getOrDefault(chosen.get(), Set.of());
    if (here.isEmpty() || now == isNew()) {
      return;
    }
    jobs.change(
        (now ? "new part: " : "no new part: ") + PartName.of(chosen.get()),
        job -> {
          Map<String, Double> priors = new TreeMap<>(job.priors());
          for (String id : here) {
            if (now) {
              priors.put(id, FaultPriors.NEW_PART);
            } else {
              priors.remove(id);
            }
          }
          return job.withPriors(priors);
        });
  }

  /** The open job; null for none. */
  ReadOnlyObjectProperty<Job> jobProperty() {
    return jobs.jobProperty();
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

  /** Kinds of parts that can be put in. */
  static List<PartKind> addable() {
    return PartKinds.all().stream().filter(kind -> kind.ports() != Ports.PLACE).toList();
  }

  /** Puts a part in after the chosen one, and chooses it. */
  void add(PartKind kind) {
    chosenPart()
        .ifPresent(
            after -> {
              String id = CircuitEdits.freeId(drawn, kind.id());
              edit("adding " + PartName.of(id), CircuitEdits.add(drawn, after, kind, id), id);
            });
  }

  /** Takes the chosen part out; what was joined to it is joined together. */
  void remove() {
    Part part = chosenPart().filter(CircuitEdits::isMovable).orElse(null);
    if (part == null) {
      return;
    }
    Optional<String> use = use(part, "removed");
    if (use.isPresent()) {
      problem.set(use.get());
      return;
    }
    int place = drawn.parts().indexOf(part);
    String next = drawn.parts().get(place == 0 ? 1 : place - 1).id();
    edit("removing " + PartName.of(part.id()), CircuitEdits.remove(drawn, part), next);
  }

  /** Moves the chosen part on by one place: with the flow for 1, against it for -1. */
  void move(int step) {
    chosenPart()
        .filter(CircuitEdits::isMovable)
        .ifPresent(
            part ->
                CircuitEdits.neighbour(drawn, part, step)
                    .ifPresent(after -> moveAfter(part.id(), after)));
  }

  /** Moves a part to the place after another. */
  void moveAfter(String id, String after) {
    Part part = part(id).filter(CircuitEdits::isMovable).orElse(null);
    if (part != null && !id.equals(after) && part(after).isPresent()) {
      edit("moving " + PartName.of(id), CircuitEdits.moveAfter(drawn, part, after), id);
    }
  }

  /** Calls a part what was typed. */
  void rename(String before, String typed) {
    Part part = part(before).orElse(null);
    String id = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
    if (part == null || id.isEmpty() || id.equals(part.id())) {
      return;
    }
    Optional<String> use = use(part, "renamed");
    if (use.isPresent()) {
      problem.set(use.get());
    } else if (!CircuitEdits.freeId(drawn, id).equals(id)) {
      problem.set("Another part is called '" + PartName.of(id) + "'; give this one its own name.");
    } else {
      edit(
          "name of " + PartName.of(id),
          CircuitEdits.rename(drawn, part, id),
          before.equals(chosen.get()) ? id : chosen.get());
    }
  }

  /** Makes a changed circuit that of the job, unless it can't be simulated. */
  private void edit(String what, Circuit changed, String choose) {
    if (changed.equals(drawn)) {
      return;
    }
    try {
      CircuitReader.read("The circuit", CircuitWriter.json(changed));
    } catch (InputException e) {
      problem.set("That can't be: " + e.getMessage());
      return;
    }
    problem.set("");
    jobs.change(what, job -> JobEdits.withCircuit(job, changed));
    chosen.set(choose);
  }

  /** Where the job names a part, as a sentence; empty where it doesn't. */
  private Optional<String> use(Part part, String done) {
    Job job = jobs.jobProperty().get();
    String name = PartName.of(part.id());
    Optional<String> where =
        clampedIn(part)
            .map(hold -> "was clamped in hold '" + hold + "'")
            .or(
                () ->
                    job.findings().stream().anyMatch(finding -> names(finding, part.id()))
                        ? Optional.of("has a finding")
                        : Optional.empty())
            .or(
                () ->
                    job.upkeep().repairs().stream().anyMatch(r -> r.part().equals(part.id()))
                        ? Optional.of("has a noted repair")
                        : Optional.empty());
    return where.map(
        why -> "The " + name + " " + why + ", so it can't be " + done + ". Take that out first.");
  }

  private static boolean names(Finding finding, String part) {
    return finding instanceof JointLook look && look.part().equals(Optional.of(part))
        || finding instanceof DropCount count && count.part().equals(part)
        || finding instanceof DropTestResult result && result.part().equals(part)
        || finding instanceof DrawOff drawn && drawn.clamped().contains(part);
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
    Map<Property, Double> stated = CircuitEdits.stated(part);
    if (value.isPresent()) {
      stated.put(property, value.getAsDouble());
    } else {
      stated.remove(property);
    }
    Part changed = Part.of(part.kind(), part.id(), part.from(), part.to(), stated);
    boolean same = changed.equals(part) && changed.states(property) == part.states(property);
    if (!same) {
      jobs.change(
          PartWords.name(property).toLowerCase(Locale.ROOT) + " of " + part.id(),
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
