/**
 * Stiff initial value problems: linearly implicit (Rosenbrock) methods, inside Commons Math's
 * framework and beside it.
 *
 * <p>Write equations as {@link holdcurve.physics.ode.StiffEquations}, choose a {@link
 * holdcurve.physics.ode.RosenbrockMethod}, then take
 *
 * <ul>
 *   <li>{@link holdcurve.physics.ode.RosenbrockIntegrator} where events, step handlers or
 *       continuous output are wanted: it is one of Commons Math's integrators;
 *   <li>{@link holdcurve.physics.ode.LeanRosenbrockDriver} where the same small problem is solved
 *       very often and only rows at given times are wanted: same steps, no framework, no garbage.
 * </ul>
 *
 * <p>Both share the arithmetic of a step ({@link holdcurve.physics.ode.RosenbrockStepper}) and the
 * choice of its length. Each step takes a fresh Jacobian; a rejected step keeps it and factors
 * again. The matrix of a step is factored without needless zeros as long as its diagonal serves as
 * pivots, and with pivoting otherwise, where pivots are compared in units of the error allowed:
 * pressures in Pa and creep volumes in m³ stand in one matrix.
 *
 * <p>A run that can't go on throws {@link holdcurve.physics.ode.StiffIntegrationException} with
 * time and component.
 */
package holdcurve.physics.ode;
