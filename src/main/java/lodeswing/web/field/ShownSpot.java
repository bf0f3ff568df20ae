package lodeswing.web.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.analysis.field.WeakSpotSearch;

/**
 * A weak spot that a picture marks.
 *
 * @param spot where it is
 * @param inPlane whether of the part in the plane, or of the whole field
 */
record ShownSpot(WeakSpot spot, boolean inPlane) {

  /** Nearer than this to one of the part in the plane, one of the whole field is the same [m]. */
  private static final double SAME = 2e-3;

  /** All spots of one part. */
  static List<ShownSpot> of(Optional<WeakSpotSearch.Found> found, boolean inPlane) {
    List<WeakSpot> spots = found.map(f -> inPlane ? f.inPlane() : f.whole()).orElse(List.of());
    return spots.stream().map(spot -> new ShownSpot(spot, inPlane)).toList();
  }

  /**
   * What lines and filings show: spots of the part in the plane, and between the magnets those
   * where the whole field is weak, from which filings are drawn away.
   */
  static List<ShownSpot> ofBoth(Optional<WeakSpotSearch.Found> found, Neighbours neighbours) {
    List<ShownSpot> shown = new ArrayList<>(of(found, true));
    List<ShownSpot> whole = of(found, false);
    for (ShownSpot one : whole) {
      boolean over = neighbours.over(one.spot().x(), one.spot().y()).isPresent();
      boolean known =
          shown.stream()
              .anyMatch(
                  other ->
                      Math.hypot(
                              other.spot().x() - one.spot().x(), other.spot().y() - one.spot().y())
                          < SAME);
      if (!over && !known) {
        shown.add(one);
      }
    }
    return shown;
  }
}
