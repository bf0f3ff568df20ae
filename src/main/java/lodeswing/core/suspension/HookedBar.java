package lodeswing.core.suspension;

import java.util.List;

/**
 * A rigid bar hung by a hook in an eye.
 *
 * @param hookOffset distance between the two axes that hook and eye make [m]
 * @param parts the parts along the bar, bob magnet included, at least one
 * @param bobArm distance of the bob magnet's centre below the second axis [m]
 */
public record HookedBar(double hookOffset, List<BarPart> parts, double bobArm)
    implements Suspension {

  public HookedBar {
    parts = List.copyOf(parts);
  }

  @Override
  public TwoAxisBody body() {
    throw new IllegalStateException("skeleton");
  }
}
