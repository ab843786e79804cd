package holdcurve.advice.whatif;

import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.limit.PassLimit;

/**
 * What is to be expected of a hold without clamps.
 *
 * @param curve with the range that holds 90 %
 * @param limit what it must still show to pass
 * @param passChance probability that it does [-]
 */
public record HoldOutlook(HoldCurve curve, PassLimit limit, double passChance) {}
