/** What a person sees, counts or measures at a circuit beside the gauge. */
package holdcurve.record.finding;
