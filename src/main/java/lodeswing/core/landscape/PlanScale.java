package lodeswing.core.landscape;

import java.util.List;
import java.util.OptionalDouble;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * Lengths in plan that horizons are held against.
 *
 * @param perCoordinate greatest plan distance per unit of a coordinate [m/rad on the bench, 1 in a
 *     textbook layout]
 * @param nearestSpacing distance of the two magnets nearest to each other in plan; empty with fewer
 *     than two
 * @param bench whether lengths are metres
 */
public record PlanScale(double perCoordinate, OptionalDouble nearestSpacing, boolean bench) {

  /** Distance at which a computed path is no longer right, on the bench [m]. */
  public static final double TRUSTED_DISTANCE = 1e-3;

  /** The same in a textbook layout, as a share of the nearest spacing. */
  public static final double TRUSTED_SHARE = 1.0 / 50;

  /**
   * Part of the distance at which paths are told apart up to which their distance is taken to grow
   * as the variational equation says; past it a pair parts almost at once.
   */
  private static final double LINEAR_SHARE = 1.0 / 3;

  /** Absolute part of a tolerance, as a share of the relative part over the largest swing. */
  private static final double ABSOLUTE_SHARE = 0.1;

  private static final double LEAST_ABSOLUTE = 1e-15;

  /**
   * The tolerance of many releases with an error of one kind.
   *
   * @param relative error of a step as a part of the swing
   * @param reach size of the largest swing [plan unit]
   */
  public Tolerance tolerance(double relative, double reach) {
    double absolute = ABSOLUTE_SHARE * relative * reach / perCoordinate;
    return new Tolerance(Math.min(1, Math.max(LEAST_ABSOLUTE, absolute)), relative);
  }

  /** The scale of a layout. */
  public static PlanScale of(Layout layout) {
    OptionalDouble nearest = nearest(magnetPlaces(layout));
    if (layout instanceof BenchLayout rig) {
      double arm = rig.suspension().body().axisOffset() + rig.suspension().body().bobArm();
      return new PlanScale(arm, nearest, true);
    }
    return new PlanScale(1, nearest, false);
  }

  /** Centres of a layout's magnets; of a textbook layout's in the plane. */
  public static List<Vec3> magnetPlaces(Layout layout) {
    if (layout instanceof BenchLayout rig) {
      return rig.magnets().stream().map(PlacedMagnet::centre).toList();
    }
    return ((TextbookLayout) layout)
        .magnets().stream().map(magnet -> new Vec3(magnet.x(), magnet.y(), 0)).toList();
  }

  private static OptionalDouble nearest(List<Vec3> places) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      for (int j = 0; j < i; j++) {
        Vec3 a = places.get(i);
        Vec3 b = places.get(j);
        double distance = Math.hypot(a.x() - b.x(), a.y() - b.y());
        // Magnets stacked on one place have no spacing in plan.
        if (distance > 0) {
          least = Math.min(least, distance);
        }
      }
    }
    return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
  }

  /**
   * Distance from the true path up to which a computed one is trusted.
   *
   * @param swing size of the swing, for a layout without spacing
   */
  public double trustedDistance(double swing) {
    return bench ? TRUSTED_DISTANCE : TRUSTED_SHARE * nearestSpacing.orElse(swing);
  }

  /**
   * Distance at which two paths are told apart: half the nearest spacing, or half the swing.
   *
   * @param swing size of the swing, for a layout without spacing
   */
  public double partedDistance(double swing) {
    return 0.5 * spacing(swing);
  }

  /**
   * Distance up to which two paths part as the variational equation says.
   *
   * @param swing size of the swing, for a layout without spacing
   */
  public double linearDistance(double swing) {
    return LINEAR_SHARE * partedDistance(swing);
  }

  /**
   * The nearest spacing of two magnets, or the swing where there is none.
   *
   * @param swing size of the swing
   */
  public double spacing(double swing) {
    return nearestSpacing.orElse(swing);
  }
}
