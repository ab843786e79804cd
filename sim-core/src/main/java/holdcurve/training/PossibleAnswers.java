package holdcurve.training;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.circuit.Circuit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What can be named as the answer to an exercise. */
public final class PossibleAnswers {
  /**
   * One answer.
   *
   * @param id as a ranking writes it: {@code none} or {@code fault@site}
   * @param words plain words, with the place
   * @param where the place; empty where nothing is wrong
   * @param symptoms what is seen on the car
   * @param repair what puts it right
   */
  public record Suspicion(String id, String words, String where, String symptoms, String repair) {}

  private PossibleAnswers() {}

  /** Nothing wrong, then every fault that a hold can show, at every site. */
  public static List<Suspicion> of(Circuit circuit, FaultCatalogue catalogue) {
    List<Suspicion> all = new ArrayList<>();
    all.add(
        new Suspicion(
            Suspect.NONE,
            "Nothing is wrong: it holds as a sound circuit does",
            "",
            "The needle sinks slowly, and ever more slowly.",
            "Nothing to repair."));
    for (LeakFault fault : catalogue.showingInHold().faults()) {
      for (Site site : FaultCatalogue.sites(fault, circuit)) {
        all.add(
            new Suspicion(
                fault.id() + "@" + site.id(),
                fault.name() + " (" + site.where() + ")",
                site.where(),
                fault.symptoms(),
                fault.repair()));
      }
    }
    return all;
  }

  /** One id for several faults at once, whatever their order; {@code none} for no fault. */
  public static String join(List<String> ids) {
    return ids.isEmpty() ? Suspect.NONE : ids.stream().sorted().collect(Collectors.joining("+"));
  }

  /** The same id with its faults in the order that {@link #join} gives them. */
  public static String canonical(String id) {
    return join(Arrays.asList(id.split("\\+")));
  }
}
