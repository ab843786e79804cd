package holdcurve.infer;

import holdcurve.attribution.Amount;
import holdcurve.attribution.Cause;
import holdcurve.attribution.FallLedger;
import holdcurve.attribution.FallPart;
import holdcurve.attribution.FallReport;
import holdcurve.attribution.FallShare;
import holdcurve.attribution.HoldFall;
import holdcurve.attribution.LeakShare;
import holdcurve.check.Cancellation;
import holdcurve.circuit.Unit;
import holdcurve.hold.Hold;
import holdcurve.job.Job;
import holdcurve.log.Reading;
import holdcurve.ode.StiffIntegrationException;
import holdcurve.part.Regulator;
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
final class FallShares {
  /** Draws of all explanations together. */
  private static final int DRAWS = 80;

  private static final int LEAST_DRAWS = 8;

  /** Less likely explanations are left out [-]. */
  private static final double MATTERS = 0.01;

  /** Leaks of less likely explanations are not listed by themselves [-]. */
  private static final double LISTED = 0.05;

  /** One draw of one explanation. */
  private record Draw(Judged judged, double[] u, double weight) {}

  /** Books of one draw. */
  private record Kept(Draw draw, HoldFall fall) {}

  private final Job job;
  private final List<Draw> draws = new ArrayList<>();
  private final List<Judged> listed = new ArrayList<>();

  /**
   * @param judged explanations, likeliest first
   * @param probability hypothesis id → probability [-]
   */
  FallShares(Job job, List<Judged> judged, Map<String, Double> probability, long seed) {
    this.job = job;
    for (Judged one : judged) {
      double likely = probability.get(one.hypothesis().id());
      if (likely >= MATTERS) {
        addDraws(one, likely, seed);
        if (likely >= LISTED) {
          listed.add(one);
        }
      }
    }
  }

  private void addDraws(Judged judged, double probability, long seed) {
    int count = Math.max(LEAST_DRAWS, (int) Math.round(DRAWS * probability));
    List<double[]> drawn = PosteriorDraws.of(judged, seed, count);
    for (double[] u : drawn) {
      draws.add(new Draw(judged, u, probability / drawn.size()));
    }
  }

  /** One report a test with two readings or more. */
  List<FallReport> reports(Workers workers) {
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
      Realisation realisation = draw.judged().model().realisation();
      Hold hold =
          new Hold(realisation.condition(draw.u(), test), realisation.setup(draw.u(), test));
      try {
        books.add(new Kept(draw, FallLedger.of(hold, from, to)));
      } catch (StiffIntegrationException e) {
        // a draw that can't be simulated counts for nothing, as in the likelihood
      }
    }
    return books;
  }

  private FallReport report(String id, Reading first, Reading last, List<Kept> books) {
    double read = first.pressure() - last.pressure();
    List<Double> weights = books.stream().map(kept -> kept.draw().weight()).toList();
    List<Map<Cause, FallPart>> parts =
        books.stream().map(kept -> kept.fall().of(read, kinds(kept.draw().judged()))).toList();
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
  private List<Cause> kinds(Judged judged) {
    List<Cause> kinds = new ArrayList<>();
    List<Hypothesis.Member> members = judged.hypothesis().members();
    for (int m = 0; m < members.size(); m++) {
      int count = judged.model().realisation().leakCount(m);
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
    for (Judged judged : listed) {
      List<HoldFall> falls =
          books.stream().filter(k -> k.draw().judged() == judged).map(Kept::fall).toList();
      int first = 0;
      for (int m = 0; m < judged.hypothesis().members().size() && !falls.isEmpty(); m++) {
        int from = first;
        int to = from + judged.model().realisation().leakCount(m);
        if (to > from) {
          leaks.add(
              leak(judged, m, falls.stream().map(f -> sum(f.leaks().subList(from, to))).toList()));
        }
        first = to;
      }
    }
    return leaks;
  }

  private static LeakShare leak(Judged judged, int m, List<FallPart> parts) {
    Hypothesis.Member member = judged.hypothesis().members().get(m);
    List<Double> alike = parts.stream().map(p -> 1.0).toList();
    return new LeakShare(
        judged.hypothesis().id(),
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
