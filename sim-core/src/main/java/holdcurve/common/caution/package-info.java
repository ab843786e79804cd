/** What to beware of near fuel, in the same words everywhere. */
package holdcurve.common.caution;
