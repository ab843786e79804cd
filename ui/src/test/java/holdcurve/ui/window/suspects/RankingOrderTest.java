package holdcurve.ui.window.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RankingOrderTest {
  private static Suspect suspect(String id, double probability) {
    return new Suspect(id, id, "", probability, Optional.empty(), "", "", List.of());
  }

  private static Ranking ranking(List<Suspect> suspects, SuspectGroup... groups) {
    return new Ranking(
        "job",
        1,
        new Verdict(Verdict.Kind.OPEN, "Open."),
        suspects,
        List.of(groups),
        2e5,
        List.of());
  }

  private static List<String> ids(List<SuspectRow> rows) {
    return rows.stream().map(row -> row.suspect().id()).toList();
  }

  @Test
  void aGroupStandsWhereItsSumPlacesIt() {
    Ranking ranking =
        ranking(
            List.of(suspect("a", 0.4), suspect("b", 0.3), suspect("c", 0.25), suspect("d", 0.05)),
            new SuspectGroup(List.of("b", "c"), 0.55, "Alike."));
    List<SuspectRow> rows = RankingOrder.rows(ranking, true);
    assertEquals(List.of("b", "c", "a", "d"), ids(rows));
    assertEquals("Alike.", rows.get(0).groupStarting().orElseThrow().reason());
    assertTrue(rows.get(1).inGroup() && rows.get(1).groupStarting().isEmpty());
    assertTrue(!rows.get(2).inGroup());
  }

  @Test
  void theUnlikelyFoldAwayUnlessTheirGroupIsLikely() {
    Ranking ranking =
        ranking(
            List.of(
                suspect("a", 0.98), suspect("b", 0.009), suspect("c", 0.007), suspect("d", 0.004)),
            new SuspectGroup(List.of("b", "c"), 0.016, "Alike."));
    assertEquals(List.of("a", "b", "c"), ids(RankingOrder.rows(ranking, false)));
    assertEquals(1, RankingOrder.unlikely(ranking));
    assertEquals(4, RankingOrder.rows(ranking, true).size());
  }

  @Test
  void nobodyIsListedTwice() {
    Ranking ranking =
        ranking(
            List.of(suspect("a", 0.5), suspect("b", 0.3), suspect("c", 0.2)),
            new SuspectGroup(List.of("a", "b"), 0.8, "Alike."),
            new SuspectGroup(List.of("b", "c"), 0.5, "Alike too."));
    assertEquals(List.of("a", "b", "c"), ids(RankingOrder.rows(ranking, true)));
  }
}
