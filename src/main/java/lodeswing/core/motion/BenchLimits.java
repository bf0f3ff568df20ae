package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.TwoAxisBody;

/** The limits of a rig on the bench. */
final class BenchLimits {

  private BenchLimits() {}

  /** Angle, plate and support always; magnets where there are any. */
  static List<Limit> of(
      BenchLayout layout, AngleEnergy potential, PivotedLoss loss, AxialForce axialForce) {
    List<Limit> limits = new ArrayList<>();
    limits.add(new PlaceLimit(Limit.Kind.ANGLE_LIMIT, BenchLimits::angleLeft));
    Clearance clearance = new Clearance(layout);
    limits.add(new PlaceLimit(Limit.Kind.PLATE_CONTACT, clearance::toPlate));
    if (layout.magnetCount() > 0) {
      limits.add(new PlaceLimit(Limit.Kind.MAGNET_CONTACT, clearance::toMagnets));
    }
    TwoAxisBody body = layout.suspension().body();
    limits.add(
        switch (layout.suspension().pullLine()) {
          case ALONG_BAR -> new LegSlack(layout.suspension(), layout.gravity(), axialForce);
          case BETWEEN_AXES -> new HookSlack(body, layout.gravity(), loss, potential, axialForce);
        });
    return List.copyOf(limits);
  }

  private static double angleLeft(double beta, double alpha) {
    return BenchMotion.MAX_ANGLE - Math.max(Math.abs(beta), Math.abs(alpha));
  }
}
