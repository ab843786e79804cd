package holdcurve.infer;

/**
 * One thing that speaks for or against a suspect.
 *
 * @param what part of a sentence, no full stop, such as "'feed clamped', 1 to 10 min: readings lie
 *     0.01 bar from its curve, 0.31 bar from the other's"
 * @param weight by how much it makes the suspect likelier than its rival, natural logarithm of a
 *     factor; negative where it speaks against it
 */
public record Reason(String what, double weight) {
  /** Whether it speaks for the suspect. */
  public boolean speaksFor() {
    return weight > 0;
  }
}
