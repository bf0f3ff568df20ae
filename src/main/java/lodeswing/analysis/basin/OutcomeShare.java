package lodeswing.analysis.basin;

/**
 * The share of one outcome among the releases of a map.
 *
 * @param end a rest point's index, or a negative code of {@link lodeswing.core.outcome.Ends}
 * @param releases how many of the map's releases ended so
 * @param share their share of all releases of the map
 * @param low lower end of its interval, see {@link BasinSummary}
 * @param high upper end of its interval
 */
public record OutcomeShare(int end, int releases, double share, double low, double high) {}
