package lodeswing.core.suspension;

/**
 * A light cord with the whole mass at the bob magnet's centre.
 *
 * @param length from pivot to the bob magnet's centre [m]
 * @param bobMass whole mass at its end, magnet included [kg]
 */
public record Cord(double length, double bobMass) implements Suspension {

  @Override
  public TwoAxisBody body() {
    return new TwoAxisBody(0, bobMass, bobMass * length, bobMass * length * length, 0, length);
  }
}
