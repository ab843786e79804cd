package holdcurve.fault;

import holdcurve.physics.circuit.Circuit;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The faults that were found, after checking what each says of itself.
 *
 * @param faults usable faults, in order of id
 * @param problems one sentence for each plugin or jar that was left out
 */
public record FaultCatalogue(List<LeakFault> faults, List<String> problems) {
  /** A broken class path can fail again and again without end. */
  private static final int MOST_FAILURES = 100;

  public FaultCatalogue {
    faults = List.copyOf(faults);
    problems = List.copyOf(problems);
  }

  /** Every fault on the class path. */
  public static FaultCatalogue load() {
    return load(Optional.empty());
  }

  /**
   * Every fault on the class path, and those in the jars of a folder. Jars are read in order of
   * name; of two faults with one id the first is kept, those of the program before all others.
   *
   * <p>What comes from the folder is asked on threads of its own and given up after two seconds; a
   * plugin that fails costs only itself.
   */
  public static FaultCatalogue load(Optional<Path> folder) {
    return load(folder, PluginCall.USUAL_LIMIT);
  }

  static FaultCatalogue load(Optional<Path> folder, Duration limit) {
    Admission admission = new Admission();
    addAll(ServiceLoader.load(LeakFault.class).iterator(), admission);
    folder.ifPresent(path -> new PluginFolder(path, limit).addTo(admission));
    return admission.catalogue();
  }

  private static void addAll(Iterator<LeakFault> found, Admission admission) {
    PluginCall call = PluginCall.direct();
    for (int failures = 0; failures < MOST_FAILURES; ) {
      try {
        if (!found.hasNext()) {
          return;
        }
        admission.admit(found.next(), "", call);
      } catch (ServiceConfigurationError | LinkageError e) {
        failures++;
        admission.refuse("A fault plugin can't be loaded (" + FaultFailure.words(e) + ").");
      }
    }
  }

  /** The fault of that id; empty if there is none. */
  public Optional<LeakFault> byId(String id) {
    return faults.stream().filter(fault -> fault.id().equals(id)).findFirst();
  }

  /**
   * Where a fault can sit in a circuit; nowhere if it gives a bad answer, which {@link #failures}
   * then tells. May take a while.
   */
  public static List<Site> sites(LeakFault fault, Circuit circuit) {
    try {
      return fault.sites(circuit);
    } catch (FaultFailure e) {
      return List.of();
    }
  }

  /**
   * The parts to look at for a suspect. Asks plugins for their sites, which may take a while.
   *
   * @param suspect id of a hypothesis: {@code fault@site}, or two of those joined by {@code +}
   */
  public Set<String> parts(Circuit circuit, String suspect) {
    Set<String> parts = new LinkedHashSet<>();
    for (String member : suspect.split("\\+")) {
      String[] pieces = member.split("@", 2);
      byId(pieces[0]).stream()
          .flatMap(fault -> sites(fault, circuit).stream())
          .filter(site -> pieces.length == 2 && site.id().equals(pieces[1]))
          .forEach(site -> parts.addAll(site.parts()));
    }
    return parts;
  }

  /** Only those that a hold can speak for, with the same problems. */
  public FaultCatalogue showingInHold() {
    return only(LeakFault::showsInHold);
  }

  /** Only some, with the same problems. */
  public FaultCatalogue only(Predicate<LeakFault> which) {
    return new FaultCatalogue(faults.stream().filter(which).toList(), problems);
  }

  /**
   * What went wrong since the faults were loaded: one sentence for each fault that gave a bad
   * answer when it was asked for its sites or a condition.
   */
  public List<String> failures() {
    List<String> sentences = new ArrayList<>();
    for (LeakFault fault : faults) {
      if (fault instanceof GuardedFault guarded) {
        guarded.failure().ifPresent(failure -> sentences.add(failure.getMessage()));
      }
    }
    return sentences;
  }
}
