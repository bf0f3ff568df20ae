package lodeswing.core.motion;

import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * The places of a rig at which its bob does not lie deep within a magnet of the plate: there alone
 * tables must hold, since a path ends at the first touch.
 *
 * <p>Safe for several threads.
 */
public final class ContactRegion implements Region {

  /** Depth from which nothing matters any more, beyond what a scan for rest points looks at [m]. */
  private static final double DEEP = 2e-3;

  /**
   * Places looked at to each side of a square's middle: a touch between them shows when it is cut.
   */
  private static final int LOOKS = 4;

  private final Clearance clearance;
  private final double perAngle;

  /** The region of a layout. */
  public ContactRegion(BenchLayout layout) {
    this.clearance = new Clearance(layout);
    TwoAxisBody body = layout.suspension().body();
    double bob =
        layout
            .bob()
            .map(b -> Math.hypot(b.magnet().planRadius(), b.magnet().halfHeight()))
            .orElse(0.0);
    this.perAngle = body.axisOffset() + body.bobArm() + bob;
  }

  @Override
  public boolean matters(double u, double v, double half) {
    return clearance.toMagnets(u, v) > -DEEP - perAngle * Math.sqrt(2) * half;
  }

  @Override
  public boolean allMatters(double u, double v, double half) {
    for (int i = -LOOKS; i <= LOOKS; i++) {
      for (int j = -LOOKS; j <= LOOKS; j++) {
        if (!(clearance.toMagnets(u + i * half / LOOKS, v + j * half / LOOKS) > 0)) {
          return false;
        }
      }
    }
    return true;
  }
}
