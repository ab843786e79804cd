/** What can be said of a hold while the gauge is still being watched. */
package holdcurve.advice.live;
