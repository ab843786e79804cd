/**
 * What to do next: which test tells most for the time it takes, what each outcome would mean, and
 * in which order tests and repairs cost least.
 *
 * <p>Start at {@link holdcurve.advice.plan.Planner}.
 */
package holdcurve.advice.plan;
