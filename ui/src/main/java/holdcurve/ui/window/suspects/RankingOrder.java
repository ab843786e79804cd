package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Lines of a ranking: likeliest first, a group in one piece where its sum places it. */
final class RankingOrder {
  /** Lone suspects below this stay folded away until asked for [-]. */
  static final double UNLIKELY = 0.01;

  private record Piece(double probability, List<SuspectRow> rows) {}

  private RankingOrder() {}

  /**
   * @param all whether unlikely ones are wanted too
   */
  static List<SuspectRow> rows(Ranking ranking, boolean all) {
    return pieces(ranking).stream()
        .filter(piece -> all || piece.probability() >= UNLIKELY)
        .flatMap(piece -> piece.rows().stream())
        .toList();
  }

  /** How many are folded away. */
  static int unlikely(Ranking ranking) {
    return rows(ranking, true).size() - rows(ranking, false).size();
  }

  private static List<Piece> pieces(Ranking ranking) {
    List<Piece> pieces = new ArrayList<>();
    Set<String> placed = new HashSet<>();
    for (SuspectGroup group : ranking.groups()) {
      List<Suspect> members =
          group.suspects().stream().filter(placed::add).map(ranking::suspect).toList();
      pieces.add(new Piece(group.probability(), groupRows(group, members)));
    }
    for (Suspect suspect : ranking.suspects()) {
      if (placed.add(suspect.id())) {
        pieces.add(
            new Piece(
                suspect.probability(), List.of(new SuspectRow(suspect, false, Optional.empty()))));
      }
    }
    pieces.sort(Comparator.comparingDouble(Piece::probability).reversed());
    return pieces;
  }

  private static List<SuspectRow> groupRows(SuspectGroup group, List<Suspect> members) {
    List<SuspectRow> rows = new ArrayList<>();
    for (Suspect member : members) {
      rows.add(
          new SuspectRow(member, true, rows.isEmpty() ? Optional.of(group) : Optional.empty()));
    }
    return rows;
  }
}
