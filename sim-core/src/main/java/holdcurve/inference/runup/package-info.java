/**
 * What a log shows before the pump stops: how the pressure builds up, where it stands while the
 * pump runs, and how it sags while the injectors draw.
 *
 * <p>{@link holdcurve.inference.runup.RunUp} is that part of a log, {@link
 * holdcurve.inference.runup.RunUpLikelihood} its likelihood, as rows beside the readings of the
 * holds. Pump, filter, return and injectors have nowhere else to speak.
 */
package holdcurve.inference.runup;
