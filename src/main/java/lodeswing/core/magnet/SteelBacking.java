package lodeswing.core.magnet;

/**
 * A steel sheet below the magnets, taken as a half space of infinite permeability.
 *
 * @param top height of its upper face in the layout's frame [m], at or below every magnet's lower
 *     face
 */
public record SteelBacking(double top) {

  /**
   * Checks the height.
   *
   * @throws IllegalArgumentException where it is not finite
   */
  public SteelBacking {
    if (!Double.isFinite(top)) {
      throw new IllegalArgumentException("top must be finite, was " + top);
    }
  }
}
