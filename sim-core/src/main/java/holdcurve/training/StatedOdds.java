package holdcurve.training;

import holdcurve.common.input.Require;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * How sure someone is of each possible answer.
 *
 * @param shares answer → probability [-]; they add up to 1
 */
public record StatedOdds(Map<String, Double> shares) {
  public StatedOdds {
    shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
  }

  /** No idea: every answer as likely as any other. */
  public static StatedOdds even(Collection<String> answers) {
    return of(answers, Map.of());
  }

  /**
   * Some answers with a stated probability; what is left is spread evenly over the others.
   *
   * @param answers all that can be named
   * @param stated answer → probability [-], adding up to 1 at most; answers that aren't in the list
   *     may be named too
   * @throws IllegalArgumentException if they add up to more than 1, or to less with none left over
   */
  public static StatedOdds of(Collection<String> answers, Map<String, Double> stated) {
    double sum = 0;
    for (Map.Entry<String, Double> one : stated.entrySet()) {
      sum += Require.within(one.getValue(), 0, 1, "certainty of '" + one.getKey() + "'", "-");
    }
    Set<String> rest = new LinkedHashSet<>(answers);
    rest.removeAll(stated.keySet());
    if (sum > 1 + 1e-9 || (rest.isEmpty() && sum < 1 - 1e-9)) {
      throw new IllegalArgumentException(
          "certainties add up to " + Math.round(100 * sum) + " %, not to 100 %");
    }
    Map<String, Double> shares = new LinkedHashMap<>(stated);
    double left = Math.max(0, 1 - sum);
    rest.forEach(answer -> shares.put(answer, left / rest.size()));
    return new StatedOdds(shares);
  }

  /** Probability of any of some answers [-]. */
  public double of(Collection<String> answers) {
    return answers.stream().distinct().mapToDouble(a -> shares.getOrDefault(a, 0.0)).sum();
  }

  /** The likeliest answer. */
  public String leading() {
    return shares.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
  }

  /**
   * What this belief has learned over an earlier one: Kullback and Leibler's divergence (Ann. Math.
   * Statist. 22 (1951) 79) [bit].
   */
  public double gainedOver(StatedOdds earlier) {
    double bits = 0;
    for (Map.Entry<String, Double> one : shares.entrySet()) {
      double now = one.getValue();
      double before = Math.max(LEAST, earlier.shares.getOrDefault(one.getKey(), 0.0));
      bits += now > 0 ? now * Math.log(now / before) / Math.log(2) : 0;
    }
    return Math.max(0, bits);
  }

  /** Taken for what was thought impossible before [-]. */
  private static final double LEAST = 1e-4;
}
