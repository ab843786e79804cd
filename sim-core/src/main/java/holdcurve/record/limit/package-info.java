/** What a hold must still show to pass: a limit of the trade, not of the physics. */
package holdcurve.record.limit;
