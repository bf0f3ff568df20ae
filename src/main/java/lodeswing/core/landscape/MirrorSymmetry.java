package lodeswing.core.landscape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * Which mirrors a layout is its own picture in: x turned to -x, y turned to -y, both or neither.
 *
 * <p>Every suspension and every loss is even in both angles, so magnets alone decide. In such a
 * layout a release and its mirror image have mirrored paths; computed as they stand, rounding and a
 * table's error would part the two where motion is chaotic. So ends are found of the one with y
 * (and x) above 0 and turned back: the answer has the layout's symmetry to the bit.
 *
 * <p>Immutable.
 */
public final class MirrorSymmetry {

  /** No mirror at all. */
  public static final MirrorSymmetry NONE = new MirrorSymmetry(Optional.empty(), Optional.empty());

  private static final int TURNED_X = 1;
  private static final int TURNED_Y = 2;

  /** Places of magnets are alike within this part of the farthest one's distance. */
  private static final double SAME_PLACE = 1e-12;

  /** Rest points are found to rounding; another one is far off. */
  private static final double SAME_REST_POINT = 1e-6;

  private final Optional<int[]> acrossX;
  private final Optional<int[]> acrossY;

  private MirrorSymmetry(Optional<int[]> acrossX, Optional<int[]> acrossY) {
    this.acrossX = acrossX;
    this.acrossY = acrossY;
  }

  /** The mirrors of a layout with its rest points. */
  static MirrorSymmetry of(Layout layout, List<RestPoint> points) {
    List<Spot> spots = spots(layout);
    return new MirrorSymmetry(swap(spots, points, -1, 1), swap(spots, points, 1, -1));
  }

  /** Whether x may be turned to -x. */
  public boolean turnsX() {
    return acrossX.isPresent();
  }

  /** Whether y may be turned to -y. */
  public boolean turnsY() {
    return acrossY.isPresent();
  }

  /**
   * Turns releases so that y, where the layout allows it, is not below 0, and x likewise; where a
   * place lies in the mirror its velocity decides.
   *
   * @param releases plan x, y, vx, vy side by side; changed in place
   * @return what was done to each; empty where no mirror is there
   */
  public byte[] fold(double[] releases) {
    if (!turnsX() && !turnsY()) {
      return new byte[0];
    }
    byte[] turned = new byte[releases.length / 4];
    // Subtracted from 0, so that 0 stays 0 without a sign.
    for (int i = 0; i < turned.length; i++) {
      int k = 4 * i;
      if (turnsX() && below(releases[k], releases[k + 2])) {
        releases[k] = 0.0 - releases[k];
        releases[k + 2] = 0.0 - releases[k + 2];
        turned[i] |= TURNED_X;
      }
      if (turnsY() && below(releases[k + 1], releases[k + 3])) {
        releases[k + 1] = 0.0 - releases[k + 1];
        releases[k + 3] = 0.0 - releases[k + 3];
        turned[i] |= TURNED_Y;
      }
    }
    return turned;
  }

  private static boolean below(double place, double velocity) {
    return place < 0 || (place == 0 && velocity < 0);
  }

  /**
   * The end of a release whose folded one ends so.
   *
   * @param end a rest point's index, or a negative code, which stays
   * @param turned what {@link #fold} did to the release
   */
  public int unfold(int end, byte turned) {
    return unfold(end, (turned & TURNED_X) != 0, (turned & TURNED_Y) != 0);
  }

  /**
   * The end of the mirror image of a release that ends so.
   *
   * @param end a rest point's index, or a negative code, which stays
   * @param x whether x is turned; only where {@link #turnsX}
   * @param y whether y is turned; only where {@link #turnsY}
   */
  public int unfold(int end, boolean x, boolean y) {
    if (end < 0) {
      return end;
    }
    int across = x ? acrossX.orElseThrow()[end] : end;
    return y ? acrossY.orElseThrow()[across] : across;
  }

  /** A magnet as a mirror sees it; the turn of a block counts between 0 and pi. */
  private record Spot(double x, double y, double turn, Object kind) {

    Spot mirrored(int signX, int signY) {
      return new Spot(signX * x, signY * y, -turn, kind);
    }

    boolean like(Spot other, double within) {
      double turned = Math.abs(Math.IEEEremainder(turn - other.turn, Math.PI));
      return Math.abs(x - other.x) <= within
          && Math.abs(y - other.y) <= within
          && turned <= SAME_PLACE
          && kind.equals(other.kind);
    }
  }

  private static List<Spot> spots(Layout layout) {
    List<Spot> spots = new ArrayList<>();
    if (layout instanceof TextbookLayout textbook) {
      for (TextbookLayout.Attractor magnet : textbook.magnets()) {
        spots.add(new Spot(magnet.x(), magnet.y(), 0, magnet.strength()));
      }
    } else {
      for (PlacedMagnet placed : ((BenchLayout) layout).magnets()) {
        double turn = placed.magnet() instanceof Block ? placed.turn() : 0;
        spots.add(
            new Spot(
                placed.centre().x(),
                placed.centre().y(),
                turn,
                List.of(placed.magnet(), placed.centre().z(), placed.poleUp())));
      }
    }
    return spots;
  }

  /** The rest point that each one becomes in a mirror; empty where that is none of the layout's. */
  private static Optional<int[]> swap(
      List<Spot> spots, List<RestPoint> points, int signX, int signY) {
    double farthest = spots.stream().mapToDouble(s -> Math.hypot(s.x(), s.y())).max().orElse(0);
    for (Spot spot : spots) {
      Spot image = spot.mirrored(signX, signY);
      if (spots.stream().noneMatch(other -> image.like(other, SAME_PLACE * farthest))) {
        return Optional.empty();
      }
    }
    double reach = points.stream().mapToDouble(p -> Math.hypot(p.x(), p.y())).max().orElse(0);
    double within = SAME_REST_POINT * Math.max(reach, farthest);
    int[] swapped = new int[points.size()];
    Arrays.fill(swapped, -1);
    for (RestPoint point : points) {
      int[] alike =
          points.stream()
              .filter(other -> image(point, other, signX, signY, within))
              .mapToInt(RestPoint::index)
              .toArray();
      if (alike.length != 1) {
        return Optional.empty();
      }
      swapped[point.index()] = alike[0];
    }
    boolean allMet = Arrays.stream(swapped).distinct().count() == swapped.length;
    return allMet ? Optional.of(swapped) : Optional.empty();
  }

  private static boolean image(
      RestPoint point, RestPoint other, int signX, int signY, double within) {
    if (point.continuum() || other.continuum()) {
      // A ring about the middle is its own image, wherever on it the point was found.
      double own = Math.hypot(point.x(), point.y());
      return point.continuum()
          && other.continuum()
          && Math.abs(own - Math.hypot(other.x(), other.y())) <= within;
    }
    return Math.abs(signX * point.x() - other.x()) <= within
        && Math.abs(signY * point.y() - other.y()) <= within;
  }
}
