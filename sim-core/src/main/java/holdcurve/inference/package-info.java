/**
 * What the record says about the circuit: from readings and findings to probabilities and one
 * diagnosis. The packages stand in this order, each using only those before it: {@code prior},
 * {@code finding}, {@code runup}, {@code answer}, {@code hypothesis}, {@code data}, {@code noise},
 * {@code likelihood}, {@code fit}, {@code evidence}, {@code posterior}, {@code explain}, {@code
 * decision}, {@code ranking}. Start at {@link holdcurve.inference.ranking.RankingService}.
 */
package holdcurve.inference;
