package lodeswing.core.rig;

import java.util.List;

/**
 * The plane idealisation: x'' = -omega0^2 x - drag x' + sum k_i (X_i - x) / (|r - R_i|^2 +
 * h^2)^(3/2), the same for y.
 *
 * @param omega0 rate of the swing without magnets
 * @param drag linear loss
 * @param height height h of the bob's plane over the magnets
 * @param magnets the point attractors
 */
public record TextbookLayout(double omega0, double drag, double height, List<Attractor> magnets)
    implements Layout {

  public TextbookLayout {
    magnets = List.copyOf(magnets);
  }

  @Override
  public int magnetCount() {
    return magnets.size();
  }

  @Override
  public boolean lossless() {
    return drag == 0;
  }

  @Override
  public TextbookLayout withoutMagnets() {
    return new TextbookLayout(omega0, drag, height, List.of());
  }

  /**
   * A point that attracts (positive strength) or repels (negative strength).
   *
   * @param x place in the plane
   * @param y place in the plane
   * @param strength k_i
   */
  public record Attractor(double x, double y, double strength) {}
}
