package lodeswing.core.suspension;

/**
 * A Y cord: two upper cords meet in a knot, one leg carries the bob.
 *
 * @param span distance of the two upper supports along x [m]
 * @param drop height of the supports over the knot [m]
 * @param leg from the knot to the bob magnet's centre [m]
 * @param bobMass whole mass at its end, magnet included [kg]
 */
public record Yoke(double span, double drop, double leg, double bobMass) implements Suspension {

  @Override
  public TwoAxisBody body() {
    return new TwoAxisBody(drop, bobMass, bobMass * leg, bobMass * leg * leg, 0, leg);
  }
}
