package holdcurve.ui.window.circuit;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.WorkModel;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Where in the circuit the fault is likely to be, after each ranking. */
public final class SuspectPlacesModel {
  /**
   * What is known of the places of a ranking.
   *
   * @param drawing the circuit that was ranked
   * @param chances probability of a fault, by id of the part; parts that no suspect names are
   *     absent
   */
  public record Places(Drawing drawing, Map<String, Double> chances) {
    public Places {
      chances = Map.copyOf(chances);
    }
  }

  private final OpenJobModel jobs;
  private final FaultsModel faults;
  private final ReadOnlyObjectWrapper<Places> places = new ReadOnlyObjectWrapper<>();
  private WorkModel.Item looking;

  public SuspectPlacesModel(OpenJobModel jobs, FaultsModel faults) {
    this.jobs = jobs;
    this.faults = faults;
    jobs.ranking().resultProperty().addListener((property, before, now) -> look(now));
    look(jobs.ranking().resultProperty().get());
  }

  private void look(Ranking ranking) {
    if (looking != null) {
      looking.cancel();
    }
    Job ranked = jobs.ranking().rankedProperty().get();
    if (ranking == null || ranked == null) {
      places.set(null);
      return;
    }
    Circuit circuit = ranked.circuit();
    looking =
        jobs.work()
            .start(
                "Looking up the places",
                progress ->
                    new Places(CircuitLayout.of(circuit), chances(ranking, circuit, faults::parts)),
                places::set);
  }

  /**
   * Each suspect's probability goes to the parts that it points at, in equal shares: what is
   * written at the parts then adds up.
   *
   * @param parts of a suspect, by its id
   */
  static Map<String, Double> chances(
      Ranking ranking, Circuit circuit, BiFunction<Circuit, String, Set<String>> parts) {
    Map<String, Double> chances = new LinkedHashMap<>();
    for (Suspect suspect : ranking.suspects()) {
      if (!suspect.isNone()) {
        Set<String> here = parts.apply(circuit, suspect.id());
        here.forEach(part -> chances.merge(part, suspect.probability() / here.size(), Double::sum));
      }
    }
    return chances;
  }

  /** The places; null until they are known. */
  public ReadOnlyObjectProperty<Places> placesProperty() {
    return places.getReadOnlyProperty();
  }

  PressureFormat pressures() {
    return jobs.pressures();
  }
}
