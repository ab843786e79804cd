package holdcurve.inference.explain;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.posterior.Profile;
import java.util.List;
import java.util.Optional;

/** Says where something found beside the gauge told suspects apart that the gauge can't. */
public final class FoundApart {
  /** What was found must speak this clearly: ten times likelier [nat]. */
  private static final double CLEAR = 2.3;

  private final JobModel data;
  private final Identifiability alike;

  public FoundApart(JobModel data, Identifiability alike) {
    this.data = data;
    this.alike = alike;
  }

  /**
   * @param singles hypotheses of one fault, likeliest first
   * @return empty where nothing was found or it told nothing apart
   */
  public Optional<String> sentence(List<EvaluatedHypothesis> singles) {
    if (data.sideCount() == 0 || singles.isEmpty()) {
      return Optional.empty();
    }
    EvaluatedHypothesis first = singles.get(0);
    double best = Profile.found(data, first);
    List<String> others =
        singles.stream()
            .skip(1)
            .filter(other -> alike.drainAlike(member(first), member(other)))
            .filter(other -> Profile.found(data, other) < best - CLEAR)
            .map(other -> "'" + other.hypothesis().name() + "'")
            .toList();
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The gauge alone could not tell '"
                + first.hypothesis().name()
                + "' from "
                + (others.size() == 1 ? others.get(0) : others.size() + " other causes")
                + ". What was seen and counted does.");
  }

  private static Hypothesis.Member member(EvaluatedHypothesis evaluated) {
    return evaluated.hypothesis().members().get(0);
  }
}
