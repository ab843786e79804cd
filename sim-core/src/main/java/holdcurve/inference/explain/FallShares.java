package holdcurve.inference.explain;

import holdcurve.common.input.Cancellation;
import holdcurve.common.work.ComputationException;
import holdcurve.common.work.Workers;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.LatentMap;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.Cause;
import holdcurve.physics.balance.FallLedger;
import holdcurve.physics.balance.FallPart;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.balance.HoldFall;
import holdcurve.physics.balance.LeakShare;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Attributes the fall of each test: books of volume are kept for posterior draws of every
 * explanation that matters, each weighing as much as its explanation is likely.
 */
public final class FallShares {
  /** Draws of all explanations together. */
  private static final int DRAWS = 80;

  private static final int LEAST_DRAWS = 8;

  /** Less likely explanations are left out [-]. */
  private static final double MATTERS = 0.01;

  /** Leaks of less likely explanations are not listed by themselves [-]. */
  private static final double LISTED = 0.05;

  /** One draw of one explanation. */
  private record Draw(EvaluatedHypothesis evaluated, double[] u, double weight) {}

  /** Books of one draw. */
  private record Kept(Draw draw, HoldFall fall) {}

  private final Job job;
  private final List<Draw> draws = new ArrayList<>();
  private final List<EvaluatedHypothesis> listed = new ArrayList<>();

  /**
   * @param evaluated explanations, likeliest first
   * @param probability hypothesis id → probability [-]
   */
  public FallShares(
      Job job, List<EvaluatedHypothesis> evaluated, Map<String, Double> probability, long seed) {
    this.job = job;
    for (EvaluatedHypothesis one : evaluated) {
      double likely = probability.get(one.hypothesis().id());
      if (likely >= MATTERS) {
        addDraws(one, likely, seed);
        if (likely >= LISTED) {
          listed.add(one);
        }
      }
    }
  }

  private void addDraws(EvaluatedHypothesis evaluated, double probability, long seed) {
    int count = Math.max(LEAST_DRAWS, (int) Math.round(DRAWS * probability));
    List<double[]> drawn = evaluated.draws(seed, count);
    for (double[] u : drawn) {
      draws.add(new Draw(evaluated, u, probability / drawn.size()));
    }
  }

  /** One report a test with two readings or more. */
  public List<FallReport> reports(Workers workers) {
    List<Integer> tests =
        IntStream.range(0, job.tests().size()).filter(this::falls).boxed().toList();
    return workers.each(tests, i -> "where the fall went", this::report, 1, 1);
  }

  private boolean falls(int test) {
    List<Reading> readings = job.tests().get(test).log().hold();
    return readings.size() > 1 && readings.get(readings.size() - 1).time() > readings.get(0).time();
  }

  private Optional<FallReport> report(int test) {
    List<Reading> readings = job.tests().get(test).log().hold();
    Reading first = readings.get(0);
    Reading last = readings.get(readings.size() - 1);
    List<Kept> books = books(test, first.time(), last.time());
    return books.isEmpty()
        ? Optional.empty()
        : Optional.of(report(job.tests().get(test).id(), first, last, books));
  }

  private List<Kept> books(int test, double from, double to) {
    List<Kept> books = new ArrayList<>();
    for (Draw draw : draws) {
      Cancellation.check();
      LatentMap latentMap = draw.evaluated().model().latentMap();
      Hold hold = new Hold(latentMap.condition(draw.u(), test), latentMap.setup(draw.u(), test));
      try {
        books.add(new Kept(draw, FallLedger.of(hold, from, to)));
      } catch (ComputationException e) {
        // a draw that can't be simulated counts for nothing, as in the likelihood
      }
    }
    return books;
  }

  private FallReport report(String id, Reading first, Reading last, List<Kept> books) {
    double read = first.pressure() - last.pressure();
    List<Double> weights = books.stream().map(kept -> kept.draw().weight()).toList();
    List<Map<Cause, FallPart>> parts =
        books.stream().map(kept -> kept.fall().of(read, kinds(kept.draw().evaluated()))).toList();
    List<FallShare> shares = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      List<FallPart> ofCause = parts.stream().map(map -> map.get(cause)).toList();
      shares.add(new FallShare(cause, pressure(ofCause, weights), volume(ofCause, weights)));
    }
    return new FallReport(
        id, first.time(), last.time(), first.pressure(), last.pressure(), shares, leaks(books));
  }

  /**
   * A fault that is no loss of fuel by itself is a regulator that hangs open, or something else.
   */
  private List<Cause> kinds(EvaluatedHypothesis evaluated) {
    List<Cause> kinds = new ArrayList<>();
    List<Hypothesis.Member> members = evaluated.hypothesis().members();
    for (int m = 0; m < members.size(); m++) {
      int count = evaluated.model().latentMap().leakCount(m);
      kinds.addAll(Collections.nCopies(count, kind(members.get(m))));
    }
    return kinds;
  }

  private Cause kind(Hypothesis.Member member) {
    if (member.fault().parameters().get(0).unit() == Unit.MILLILITRE_PER_MINUTE) {
      return Cause.LEAK;
    }
    boolean regulator =
        member.site().parts().stream()
            .anyMatch(id -> job.circuit().part(id).kind() == Regulator.KIND);
    return regulator ? Cause.RESEAT : Cause.OTHER;
  }

  private List<LeakShare> leaks(List<Kept> books) {
    List<LeakShare> leaks = new ArrayList<>();
    for (EvaluatedHypothesis evaluated : listed) {
      List<HoldFall> falls =
          books.stream().filter(k -> k.draw().evaluated() == evaluated).map(Kept::fall).toList();
      int first = 0;
      for (int m = 0; m < evaluated.hypothesis().members().size() && !falls.isEmpty(); m++) {
        int from = first;
        int to = from + evaluated.model().latentMap().leakCount(m);
        if (to > from) {
          leaks.add(
              leak(
                  evaluated,
                  m,
                  falls.stream().map(f -> sum(f.leaks().subList(from, to))).toList()));
        }
        first = to;
      }
    }
    return leaks;
  }

  private static LeakShare leak(EvaluatedHypothesis evaluated, int m, List<FallPart> parts) {
    Hypothesis.Member member = evaluated.hypothesis().members().get(m);
    List<Double> alike = parts.stream().map(p -> 1.0).toList();
    return new LeakShare(
        evaluated.hypothesis().id(),
        member.fault().name(),
        member.site().where(),
        pressure(parts, alike),
        volume(parts, alike));
  }

  private static FallPart sum(List<FallPart> parts) {
    return parts.stream().reduce(FallPart.NONE, FallPart::plus);
  }

  private static Amount pressure(List<FallPart> parts, List<Double> weights) {
    return Amount.of(parts.stream().map(FallPart::pressure).toList(), weights);
  }

  private static Amount volume(List<FallPart> parts, List<Double> weights) {
    return Amount.of(parts.stream().map(FallPart::volume).toList(), weights);
  }
}
