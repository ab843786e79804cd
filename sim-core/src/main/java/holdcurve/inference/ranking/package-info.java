/**
 * The service that ranks: it lists hypotheses, evaluates them and reports. Start at {@link
 * holdcurve.inference.ranking.RankingService}.
 */
package holdcurve.inference.ranking;
