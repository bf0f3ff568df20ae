package lodeswing.analysis.sweep;

import java.util.OptionalDouble;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.swing.SmallSwings;

/**
 * What a sweep measures of a layout by itself; rest points and barriers are the landscape's own.
 *
 * @param shortPeriod the shorter period of small swings without magnets and loss [s on the bench]
 * @param longPeriod the longer one
 * @param contact whether the bob can come to touch anything
 * @param clearance least distance from the bob at a rest point to a magnet or the plate [m]; empty
 *     where there is no rest point or nothing to touch
 */
public record LayoutFigures(
    double shortPeriod, double longPeriod, Contact contact, OptionalDouble clearance) {

  /** The figures of a layout made ready. */
  public static LayoutFigures of(Landscape landscape) {
    SmallSwings swings = SmallSwings.of(landscape.layout());
    return new LayoutFigures(
        Math.min(swings.periodX(), swings.periodY()),
        Math.max(swings.periodX(), swings.periodY()),
        Contact.of(landscape.restPoints().zones()),
        clearance(landscape));
  }

  private static OptionalDouble clearance(Landscape landscape) {
    double least = Double.POSITIVE_INFINITY;
    for (Limit limit : landscape.motion().limits()) {
      boolean touch =
          limit.kind() == Limit.Kind.MAGNET_CONTACT || limit.kind() == Limit.Kind.PLATE_CONTACT;
      for (RestPoint point : landscape.restPoints().list()) {
        least = touch ? Math.min(least, limit.leastMargin(point.q0(), point.q1())) : least;
      }
    }
    return Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty();
  }
}
