package lodeswing.core.suspension;

import java.util.List;

/**
 * A rigid bar hung by a hook in an eye.
 *
 * @param hookOffset distance between the two axes that hook and eye make [m], at least 0
 * @param parts the parts along the bar, bob magnet included, at least one; together they must hang
 *     below the second axis
 * @param bobArm distance of the bob magnet's centre below the second axis [m], above 0
 */
public record HookedBar(double hookOffset, List<BarPart> parts, double bobArm)
    implements Suspension {

  public HookedBar {
    parts = List.copyOf(parts);
    if (!(hookOffset >= 0 && hookOffset < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("hookOffset must be at least 0 m, but is " + hookOffset);
    }
    TwoAxisBody.requirePositive(bobArm, "bobArm");
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a bar needs at least one part");
    }
  }

  /** The sums of the parts, own moments by the parallel-axis theorem (Huygens-Steiner). */
  @Override
  public TwoAxisBody body() {
    double mass = 0;
    double first = 0;
    double swing = 0;
    double axial = 0;
    for (BarPart part : parts) {
      mass += part.mass();
      first += part.mass() * part.centre();
      swing += part.mass() * part.centre() * part.centre() + part.transverseInertia();
      axial += part.axialInertia();
    }
    return new TwoAxisBody(hookOffset, mass, first, swing, axial, bobArm);
  }

  @Override
  public HookedBar lengthened(double longer) {
    List<BarPart> lower = parts.stream().map(part -> part.lowered(longer)).toList();
    return new HookedBar(hookOffset, lower, bobArm + longer);
  }

  @Override
  public PullLine pullLine() {
    return PullLine.BETWEEN_AXES;
  }

  @Override
  public double slackestShare(double sinBeta, double cosBeta) {
    return Double.POSITIVE_INFINITY;
  }
}
