package holdcurve.ui.window.job;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Which faults are known, and from which folder more of them come. */
public final class FaultsModel {
  private final Function<Optional<Path>, FaultCatalogue> loader;
  private final ObjectProperty<Path> folder = new SimpleObjectProperty<>();
  private FaultCatalogue loaded;
  private Path loadedFrom;

  /**
   * @param loader asked once a folder, on a background thread
   * @param folderOrNull folder with jars of faults
   */
  public FaultsModel(Function<Optional<Path>, FaultCatalogue> loader, Path folderOrNull) {
    this.loader = loader;
    folder.set(folderOrNull);
  }

  /** Folder with jars of faults; null for none. */
  public ObjectProperty<Path> folderProperty() {
    return folder;
  }

  /** The faults there are now. Takes long when first asked after a change of folder. */
  public synchronized FaultCatalogue catalogue() {
    Path from = folder.get();
    if (loaded == null || !java.util.Objects.equals(from, loadedFrom)) {
      loaded = loader.apply(Optional.ofNullable(from));
      loadedFrom = from;
    }
    return loaded;
  }

  /**
   * The faults that can sit at one part of a circuit alone, by id of the part. May ask plugins, so
   * call it in the background.
   */
  public Map<String, Set<String>> faultsOfParts(Circuit circuit) {
    Map<String, Set<String>> faults = new TreeMap<>();
    for (LeakFault fault : catalogue().faults()) {
      List<Site> sites = FaultCatalogue.sites(fault, circuit);
      if (sites.size() == 1 && sites.get(0).parts().size() == 1) {
        faults
            .computeIfAbsent(sites.get(0).parts().iterator().next(), part -> new TreeSet<>())
            .add(fault.id());
      }
    }
    return faults;
  }

  /**
   * The parts to look at for a suspect. May ask plugins, so call it in the background.
   *
   * @param suspect id of a hypothesis: {@code fault@site}, or two of those joined by {@code +}
   */
  public Set<String> parts(Circuit circuit, String suspect) {
    return catalogue().parts(circuit, suspect);
  }
}
