package holdcurve.training;

import holdcurve.common.work.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Evidence that was ranked once and stored, one line a number: exercise, steps, kind (odds, plan or
 * leading), id, value. A ranking takes seconds, and policies share most of theirs.
 */
final class StoredEvidence implements EvidenceAssessor {
  static final Path FILE =
      Path.of(
          System.getProperty("holdcurve.root", ".."),
          "plugins/src/test/resources/training/policy-evidence.csv");

  private static final String HEADING = "exercise,steps,kind,id,value";

  /** Odds below this change no score [-]. */
  private static final double LEAST = 1e-4;

  private final Map<String, List<String[]>> stored = new TreeMap<>();
  private final EvidenceAssessor ranked;

  /**
   * @param ranked asked for what isn't stored; null to fail there
   */
  StoredEvidence(EvidenceAssessor ranked) {
    this.ranked = ranked;
  }

  static StoredEvidence read() throws IOException {
    StoredEvidence evidence = new StoredEvidence(null);
    for (String line : Files.readAllLines(FILE)) {
      String[] cells = line.split(",", -1);
      if (!line.equals(HEADING)) {
        evidence
            .stored
            .computeIfAbsent(cells[0] + "," + cells[1], k -> new ArrayList<>())
            .add(cells);
      }
    }
    return evidence;
  }

  void write() throws IOException {
    List<String> lines = new ArrayList<>(List.of(HEADING));
    stored.values().forEach(all -> all.forEach(cells -> lines.add(String.join(",", cells))));
    Files.createDirectories(FILE.getParent());
    Files.write(FILE, lines);
  }

  @Override
  public Evidence after(TrainingSession session, int steps, Progress progress) {
    String key =
        session.exercise().title().replace(",", "")
            + ","
            + session.taken().subList(0, steps).stream()
                .map(taken -> taken.step().id())
                .collect(Collectors.joining(" "));
    if (!stored.containsKey(key) && ranked == null) {
      throw new UncheckedIOException(
          new IOException(key + " is not stored; run with -Dpolicies=rank to rank it"));
    }
    return evidence(
        session.exercise(),
        stored.computeIfAbsent(key, k -> cells(k, ranked.after(session, steps, progress))));
  }

  private static List<String[]> cells(String key, Evidence evidence) {
    List<String> lines = new ArrayList<>();
    evidence.odds().shares().forEach((id, share) -> add(lines, key, "odds", id, share, LEAST));
    evidence.worth().forEach(one -> add(lines, key, "plan", one.step().id(), one.bits(), -1));
    return lines.stream().map(line -> line.split(",")).collect(Collectors.toList());
  }

  private static void add(
      List<String> lines, String key, String kind, String id, double value, double least) {
    if (value > least) {
      lines.add(String.format(Locale.ROOT, "%s,%s,%s,%.4f", key, kind, id, value));
    }
  }

  private static Evidence evidence(Exercise exercise, List<String[]> lines) {
    Map<String, Double> odds = new LinkedHashMap<>();
    List<Evidence.Worth> worth = new ArrayList<>();
    for (String[] cells : lines) {
      double value = Double.parseDouble(cells[4]);
      if (cells[2].equals("odds")) {
        odds.put(cells[3], value);
      } else {
        worth.add(new Evidence.Worth(Steps.byId(exercise.steps(), cells[3]), value));
      }
    }
    return new Evidence(new StatedOdds(odds), "", worth, true);
  }
}
