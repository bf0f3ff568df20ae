package lodeswing.core.suspension;

/**
 * A Y cord: two upper cords meet in a knot, one leg carries the bob.
 *
 * @param span distance of the two upper supports along x [m], above 0
 * @param drop height of the supports over the knot [m], above 0
 * @param leg from the knot to the bob magnet's centre [m], above 0
 * @param bobMass whole mass at its end, magnet included [kg], above 0
 */
public record Yoke(double span, double drop, double leg, double bobMass) implements Suspension {

  public Yoke {
    TwoAxisBody.requirePositive(span, "span");
    TwoAxisBody.requirePositive(drop, "drop");
    TwoAxisBody.requirePositive(leg, "leg");
    TwoAxisBody.requirePositive(bobMass, "bobMass");
  }

  @Override
  public TwoAxisBody body() {
    return new TwoAxisBody(drop, bobMass, bobMass * leg, bobMass * leg * leg, 0, leg);
  }

  @Override
  public Yoke lengthened(double longer) {
    return new Yoke(span, drop, leg + longer, bobMass);
  }

  @Override
  public PullLine pullLine() {
    return PullLine.ALONG_BAR;
  }

  /**
   * Equilibrium of the light knot: with w = span/2 and u the upper cords' length, the two pulls are
   * u/2 (cos(beta)/drop +- sin(beta)/w) times the leg's, so both pull while |tan beta| &lt; w/drop.
   */
  @Override
  public double slackestShare(double sinBeta, double cosBeta) {
    double half = span / 2;
    double upper = Math.sqrt(half * half + drop * drop);
    return upper / 2 * (cosBeta / drop - Math.abs(sinBeta) / half);
  }
}
