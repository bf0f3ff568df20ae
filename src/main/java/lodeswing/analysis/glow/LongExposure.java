package lodeswing.analysis.glow;

/**
 * What is exposed and when it is looked at.
 *
 * @param until when the light goes out, or from when on the path is left out [s]
 * @param lookedAt when the paper is looked at, not before [s]
 * @param spot width of the light's spot at half its brightness [m]
 * @param decay how the paper fades
 */
public record LongExposure(double until, double lookedAt, double spot, DecayLaw decay) {

  /** Width at half height of a normal distribution over its standard deviation, 2 sqrt(2 ln 2). */
  private static final double HALF_HEIGHT = 2 * Math.sqrt(2 * Math.log(2));

  /**
   * @throws IllegalArgumentException where the spot has no size or the paper is looked at before
   *     the light goes out
   */
  public LongExposure {
    if (!(spot > 0) || !(lookedAt >= until)) {
      throw new IllegalArgumentException("A spot has a size, and one looks when it is over.");
    }
  }

  /** Standard deviation of the spot [m]. */
  double spread() {
    return spot / HALF_HEIGHT;
  }
}
