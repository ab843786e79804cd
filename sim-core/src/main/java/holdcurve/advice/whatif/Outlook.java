package holdcurve.advice.whatif;

import holdcurve.common.number.Interval;

/**
 * What is to be expected of a circuit, with ranges that hold 90 %.
 *
 * @param hold the hold without clamps
 * @param buildUp from rest to nine tenths of the pressure that priming reaches [s]
 * @param primed pressure at the gauge at the end of priming [Pa gauge]
 * @param idle likewise with the engine idling
 * @param fullLoad likewise at full load
 */
public record Outlook(
    HoldOutlook hold, Interval buildUp, Interval primed, Interval idle, Interval fullLoad) {}
