package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Sorts a heap of injectors into sets for engines, so that the widest of the sets is as narrow as
 * it can be, and the sum of their spreads as small as it then can be.
 *
 * <p>Sets of neighbours in order of flow can't be bettered, so it is enough to choose where each
 * set begins; what falls between two sets is left over.
 *
 * @param sets the lowest first; within a set in order of flow
 * @param left over, in order of flow
 * @param unfit left out for a drip, their spray or their coil
 */
public record MatchedSets(List<MatchedSet> sets, List<String> left, List<String> unfit) {

  /**
   * One set.
   *
   * @param ids in order of flow, the lowest first
   * @param mean static flow [m³/s]
   * @param spread largest less smallest, as a share of the mean [-]
   * @param flags what is to be known of single ones: those beyond the limit among this set or among
   *     the whole sheet, and those too close to it to call
   */
  public record MatchedSet(List<String> ids, double mean, double spread, List<String> flags) {
    public MatchedSet {
      ids = List.copyOf(ids);
      flags = List.copyOf(flags);
    }
  }

  private record Sized(String id, double flow, String flag) {}

  /** Widest spread and sum of spreads of the sets chosen so far. */
  private record Cost(double widest, double sum) implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0);

    Cost plus(double spread) {
      return new Cost(Math.max(widest, spread), sum + spread);
    }

    @Override
    public int compareTo(Cost other) {
      return Comparator.comparingDouble(Cost::widest)
          .thenComparingDouble(Cost::sum)
          .compare(this, other);
    }
  }

  /**
   * @param size injectors to a set
   * @param limits from which departure an injector is flagged
   * @throws IllegalArgumentException if size isn't from 2 to the number of injectors that are fit
   */
  public static MatchedSets of(BenchReport report, int size, BenchLimits limits) {
    List<String> unfit = new ArrayList<>();
    List<Sized> fit = new ArrayList<>();
    for (InjectorReport injector : report.injectors()) {
      FlowReport now = injector.now();
      if (!injector.troubles().isEmpty() || now.staticFlow().isEmpty()) {
        unfit.add(injector.id());
      } else {
        fit.add(new Sized(injector.id(), now.staticFlow().getAsDouble(), flag(injector)));
      }
    }
    if (size < 2 || size > fit.size()) {
      throw new IllegalArgumentException(
          "sets of " + size + " can't be made of " + fit.size() + " injectors");
    }
    fit.sort(Comparator.comparingDouble(Sized::flow));
    return choose(fit, size, unfit, limits);
  }

  /** Where it stands on the whole sheet, if not surely in line; empty for nothing. */
  private static String flag(InjectorReport injector) {
    if (injector.isOpen()) {
      return injector.id() + " is too close to the limit to call.";
    }
    double departure = injector.now().worst().map(Interval::middle).orElse(0.0);
    return injector.isOut()
        ? injector.id() + " is " + howFar(departure) + " against the whole sheet."
        : "";
  }

  private static String howFar(double departure) {
    return SheetNumbers.percent(departure) + (departure < 0 ? " low" : " high");
  }

  private static List<String> flags(List<Sized> members, BenchLimits limits) {
    List<String> flags = new ArrayList<>();
    int n = members.size();
    double middle = (members.get((n - 1) / 2).flow + members.get(n / 2).flow) / 2;
    for (Sized member : members) {
      double departure = member.flow / middle - 1;
      if (Standing.of(departure, limits) != Standing.IN_LINE) {
        flags.add(member.id + " is " + howFar(departure) + " in this set: not matched.");
      } else if (!member.flag.isEmpty()) {
        flags.add(member.flag);
      }
    }
    return flags;
  }

  /** The best with the first i injectors and k sets, for all i and k: ends with a set, or skips. */
  private static MatchedSets choose(
      List<Sized> fit, int size, List<String> unfit, BenchLimits limits) {
    int n = fit.size();
    int count = n / size;
    Cost[][] best = new Cost[n + 1][count + 1];
    boolean[][] ends = new boolean[n + 1][count + 1];
    for (int i = 0; i <= n; i++) {
      best[i][0] = Cost.NONE;
      for (int k = 1; k <= Math.min(count, i / size); k++) {
        Cost with = best[i - size][k - 1].plus(spread(fit.subList(i - size, i)));
        boolean skip = best[i - 1][k] != null && best[i - 1][k].compareTo(with) <= 0;
        best[i][k] = skip ? best[i - 1][k] : with;
        ends[i][k] = !skip;
      }
    }
    List<MatchedSet> sets = new ArrayList<>();
    List<String> left = new ArrayList<>();
    int k = count;
    for (int i = n; i > 0; ) {
      if (k > 0 && ends[i][k]) {
        sets.add(0, set(fit.subList(i - size, i), limits));
        i -= size;
        k--;
      } else {
        left.add(0, fit.get(--i).id);
      }
    }
    return new MatchedSets(sets, left, unfit);
  }

  private static MatchedSet set(List<Sized> members, BenchLimits limits) {
    return new MatchedSet(
        members.stream().map(Sized::id).toList(),
        mean(members),
        spread(members),
        flags(members, limits));
  }

  private static double mean(List<Sized> members) {
    return members.stream().mapToDouble(Sized::flow).average().orElseThrow();
  }

  private static double spread(List<Sized> members) {
    return (members.get(members.size() - 1).flow - members.get(0).flow) / mean(members);
  }
}
