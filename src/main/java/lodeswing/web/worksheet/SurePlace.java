package lodeswing.web.worksheet;

import java.util.Optional;
import lodeswing.analysis.worksheet.PlaceTrials;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.layout.LayoutDocument;

/**
 * The place to let go at that a worksheet calls the surest; others show the path from there.
 *
 * @param x in the layout's unit of length
 * @param y in the layout's unit of length
 */
public record SurePlace(double x, double y) {

  private static final double RING = 0.7;
  private static final double DIGITS = 1e3;

  /**
   * The surest of the places that were tried for a worksheet; nothing where a bob can be let go at
   * none of them.
   *
   * @param figures the result of a worksheet's work
   */
  public static Optional<SurePlace> of(LayoutDocument layout, byte[] figures) {
    return StoredFigures.read(figures).pair().stream()
        .findFirst()
        .map(place -> new SurePlace(layout.shown(place.x()), layout.shown(place.y())));
  }

  /** The first place of the middle ring that a worksheet would try, for layouts that have none. */
  public static SurePlace untried(LayoutDocument layout) {
    double radius = RING * UsualWindow.halfWidth(layout);
    double angle = 2 * Math.PI * PlaceTrials.OFF_AXIS / PlaceTrials.DIRECTIONS;
    double digits = layout.model().equals("bench") ? 1 : DIGITS;
    return new SurePlace(
        Math.rint(radius * Math.cos(angle) * digits) / digits,
        Math.rint(radius * Math.sin(angle) * digits) / digits);
  }
}
