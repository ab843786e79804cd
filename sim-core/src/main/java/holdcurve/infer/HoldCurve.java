package holdcurve.infer;

/**
 * What the gauge should show in one hold test if a hypothesis is true, before reading error.
 *
 * @param test id of the hold test
 * @param time since the pump stopped [s], ascending
 * @param middle expected reading [Pa gauge], one a time
 * @param low 5 % quantile of the reading [Pa gauge]
 * @param high 95 % quantile of the reading [Pa gauge]
 */
public record HoldCurve(String test, double[] time, double[] middle, double[] low, double[] high) {}
