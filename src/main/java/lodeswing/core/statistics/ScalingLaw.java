package lodeswing.core.statistics;

/**
 * An exponent found over a range of scales; it says nothing of scales outside that range.
 *
 * @param exponent the exponent with its standard error and 95 % interval
 * @param smallestScale the smallest scale of the fit, in spacings of the grid or in the window's
 *     own unit, as the maker states
 * @param largestScale the largest
 * @param scales how many scales were fitted
 */
public record ScalingLaw(Estimate exponent, double smallestScale, double largestScale, int scales) {

  ScalingLaw withExponent(Estimate other) {
    return new ScalingLaw(other, smallestScale, largestScale, scales);
  }
}
