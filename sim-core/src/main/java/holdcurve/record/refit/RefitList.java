package holdcurve.record.refit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.common.caution.Cautions;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The steps of a refit, in the order they are done.
 *
 * @param steps each with an id of its own
 */
public record RefitList(List<RefitStep> steps) {
  private static final class Shipped {
    private static final RefitList LIST = load();
  }

  public RefitList {
    steps = List.copyOf(steps);
    if (steps.stream().map(RefitStep::id).distinct().count() != steps.size()) {
      throw new IllegalArgumentException("two refit steps have the same id");
    }
  }

  /** The list of the data file {@code refit-list.json} beside this class, with nothing ticked. */
  public static RefitList shipped() {
    return Shipped.LIST;
  }

  private static RefitList load() {
    try (InputStream in = RefitList.class.getResourceAsStream("refit-list.json")) {
      List<RefitStep> steps = new ArrayList<>();
      for (JsonNode step : new ObjectMapper().readTree(in).get("steps")) {
        steps.add(
            new RefitStep(
                step.get("id").asText(),
                step.get("text").asText(),
                caution(step),
                Optional.empty()));
      }
      return new RefitList(steps);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What all work near fuel needs, in the words it has everywhere, then what this step needs. */
  private static String caution(JsonNode step) {
    List<String> texts = new ArrayList<>();
    step.path("cautions").forEach(id -> texts.add(Cautions.text(id.asText())));
    texts.add(step.path("caution").asText());
    return String.join(" ", texts).strip();
  }

  /** The step with this id. */
  public Optional<RefitStep> step(String id) {
    return steps.stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /** The first step that isn't ticked. */
  public Optional<RefitStep> next() {
    return steps.stream().filter(step -> !step.isDone()).findFirst();
  }

  /** How many steps are ticked. */
  public int done() {
    return (int) steps.stream().filter(RefitStep::isDone).count();
  }

  /**
   * The same list with one step ticked.
   *
   * @throws IllegalArgumentException if there is no such step
   */
  public RefitList tick(String id, RefitTick how) {
    return changed(id, step -> step.ticked(how));
  }

  /**
   * The same list with one step to be done again.
   *
   * @throws IllegalArgumentException if there is no such step
   */
  public RefitList untick(String id) {
    return changed(id, RefitStep::open);
  }

  private RefitList changed(String id, UnaryOperator<RefitStep> change) {
    if (step(id).isEmpty()) {
      throw new IllegalArgumentException("no refit step '" + id + "'");
    }
    return new RefitList(
        steps.stream().map(step -> step.id().equals(id) ? change.apply(step) : step).toList());
  }
}
