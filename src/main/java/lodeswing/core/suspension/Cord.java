package lodeswing.core.suspension;

/**
 * A light cord with the whole mass at the bob magnet's centre: the spherical pendulum.
 *
 * @param length from pivot to the bob magnet's centre [m], above 0
 * @param bobMass whole mass at its end, magnet included [kg], above 0
 */
public record Cord(double length, double bobMass) implements Suspension {

  public Cord {
    TwoAxisBody.requirePositive(length, "length");
    TwoAxisBody.requirePositive(bobMass, "bobMass");
  }

  @Override
  public TwoAxisBody body() {
    return new TwoAxisBody(0, bobMass, bobMass * length, bobMass * length * length, 0, length);
  }

  @Override
  public Cord lengthened(double longer) {
    return new Cord(length + longer, bobMass);
  }

  @Override
  public PullLine pullLine() {
    return PullLine.ALONG_BAR;
  }

  @Override
  public double slackestShare(double sinBeta, double cosBeta) {
    return Double.POSITIVE_INFINITY;
  }
}
