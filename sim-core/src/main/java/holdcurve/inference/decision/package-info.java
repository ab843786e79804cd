/** From probabilities, findings and limits to one {@link holdcurve.inference.answer.Diagnosis}. */
package holdcurve.inference.decision;
