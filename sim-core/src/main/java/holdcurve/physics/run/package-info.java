/**
 * A whole log, computed: rest, prime, run, pump stop, clamps, hold.
 *
 * <p>{@link holdcurve.physics.run.HoldRun} is the short way in; {@link
 * holdcurve.physics.run.RunSimulator} takes any {@link holdcurve.physics.run.RunPlan}. Every node
 * is kept and every switch is an event, so this is for showing and for checking; rankings use the
 * lumped {@code HoldSimulator}.
 */
package holdcurve.physics.run;
