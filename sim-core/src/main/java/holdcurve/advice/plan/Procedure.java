package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a test is done.
 *
 * @param id short and unique in a plan
 * @param name in plain words
 * @param minutes it takes, preparing and clearing up included
 * @param isHold whether it is another hold; else something is looked at or counted
 * @param clamped hoses that are clamped
 * @param steps in the order in which they are done
 * @param cautions to be read before
 */
public record Procedure(
    String id,
    String name,
    double minutes,
    boolean isHold,
    Set<String> clamped,
    List<Message> steps,
    List<String> cautions) {
  public Procedure {
    clamped = Collections.unmodifiableSet(new TreeSet<>(clamped));
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
  }
}
