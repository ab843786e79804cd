/**
 * What a person wrote down about one car: the job, its gauge logs, findings, repairs, the refit
 * list and the pass limit. Uses {@code physics} and {@code common}.
 */
package holdcurve.record;
