package lodeswing.core.statistics;

/**
 * Slope of a straight line through a series taken at even intervals, by least squares, with an
 * error that allows for neighbours that depend on each other.
 *
 * <p>The variance of the slope is W. K. Newey and K. D. West's, Econometrica 55 (1987) 703, with
 * Bartlett's weights 1 - l/(L + 1) on the lags l up to L; the interval is Student's, with as many
 * degrees of freedom as the maker names, since the samples are no independent ones. Over ten spans
 * of L of noise that remembers a quarter of one it held the true slope in 85 of 100 series, not in
 * 95.
 */
public final class TrendLine {

  private TrendLine() {}

  /**
   * Fits the line.
   *
   * @param values the series, three or more
   * @param interval between two of them, above 0
   * @param lags how far neighbours depend on each other, from 0 to below the number of values
   * @param degreesOfFreedom of the error, above 0
   */
  public static Estimate slope(
      double[] values, double interval, int lags, double degreesOfFreedom) {
    int n = values.length;
    if (n < 3 || lags < 0 || lags >= n || !(interval > 0)) {
      throw new IllegalArgumentException("no line through so few values");
    }
    double middle = (n - 1) / 2.0;
    double mean = 0;
    for (double value : values) {
      mean += value / n;
    }
    double squares = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      squares += (i - middle) * (i - middle);
      products += (i - middle) * (values[i] - mean);
    }
    double slope = products / squares;
    double[] score = new double[n];
    for (int i = 0; i < n; i++) {
      score[i] = (i - middle) * (values[i] - mean - slope * (i - middle));
    }
    double variance = covariance(score, 0);
    for (int lag = 1; lag <= lags; lag++) {
      variance += 2 * (1 - lag / (lags + 1.0)) * covariance(score, lag);
    }
    double error = Math.sqrt(Math.max(0, variance)) / squares;
    return Estimate.ofStudent(slope / interval, error / interval, degreesOfFreedom);
  }

  private static double covariance(double[] score, int lag) {
    double sum = 0;
    for (int i = lag; i < score.length; i++) {
      sum += score[i] * score[i - lag];
    }
    return sum;
  }
}
