package holdcurve.physics.ode;

/**
 * What one run cost.
 *
 * @param accepted steps taken, one Jacobian each
 * @param rejected attempts thrown away
 * @param evaluations calls of f
 * @param factorizations LU factorizations
 */
public record StiffRun(int accepted, int rejected, int evaluations, int factorizations) {}
