/** The answer as plain values: suspects, reasons, verdict, next step. Nothing here computes. */
package holdcurve.inference.answer;
