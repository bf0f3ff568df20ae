package lodeswing.analysis.freeswing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;
import lodeswing.core.suspension.Yoke;

/**
 * A suspension whose two small swings stand in a wanted ratio.
 *
 * <p>With v swings along y to one along x, v^2 = L_x/L_y for the lengths L = I/(sum of moments) of
 * the simple pendulums of the same periods. A Y cord has L_x = leg and L_y = leg + drop, so that
 * leg = v^2 (leg + drop). A bar with offset d has L_x = I/S1 and L_y = (I + 2 d S1 + M d^2)/(S1 + M
 * d), a quadratic in d: M d^2 + (2 S1 - M L_y) d + I - S1 L_y = 0.
 *
 * @param keeps what of the rig stays as it is
 * @param suspension the changed suspension
 * @param upper relative change of v per length of the drop or the hook offset [1/m], without sign
 * @param leg the same of a Y cord's leg; empty for a bar
 */
public record RatioDesign(Keeps keeps, Suspension suspension, double upper, OptionalDouble leg) {

  /** How often the figure closes while the hand's error may change its form. */
  public static final int CLOSINGS = 10;

  /** Share of all its forms that the figure may go through meanwhile. */
  private static final double FORMS = 1.0 / 8;

  /** Angle up to which the upper cords of a Y cord made of a single one both pull. */
  private static final double TIGHT_UP_TO = Math.toRadians(30);

  /** What of the rig stays as it is. */
  public enum Keeps {
    /** The leg of the Y cord: the supports are raised or lowered over the knot. */
    LEG("leg"),
    /** The whole height of the cord or Y cord: the knot is moved. */
    HEIGHT("height"),
    /** The bar: another hook. */
    BAR("bar");

    private final String word;

    Keeps(String word) {
      this.word = word;
    }

    /** The word in requests and answers. */
    public String word() {
      return word;
    }
  }

  /**
   * The suspensions that give a ratio, made of the one there is; empty where it cannot.
   *
   * @param now what there is
   * @param ratio what is wanted
   */
  public static List<RatioDesign> of(Suspension now, WholeRatio ratio) {
    double square = ratio.value() * ratio.value();
    if (now instanceof Cord cord) {
      return ofCord(cord, square);
    }
    return now instanceof Yoke yoke ? ofYoke(yoke, square) : ofBar((HookedBar) now, square);
  }

  private static List<RatioDesign> ofCord(Cord cord, double square) {
    if (square >= 1) {
      return List.of();
    }
    double leg = cord.length() * square;
    double drop = cord.length() - leg;
    double span = 2 * drop * Math.tan(TIGHT_UP_TO);
    return List.of(yCord(Keeps.HEIGHT, new Yoke(span, drop, leg, cord.bobMass())));
  }

  private static List<RatioDesign> ofYoke(Yoke yoke, double square) {
    if (square >= 1) {
      return List.of();
    }
    double height = yoke.drop() + yoke.leg();
    double drop = yoke.leg() * (1 / square - 1);
    return List.of(
        yCord(Keeps.LEG, new Yoke(yoke.span(), drop, yoke.leg(), yoke.bobMass())),
        yCord(
            Keeps.HEIGHT,
            new Yoke(yoke.span(), height * (1 - square), height * square, yoke.bobMass())));
  }

  private static RatioDesign yCord(Keeps keeps, Yoke yoke) {
    double height = yoke.drop() + yoke.leg();
    return new RatioDesign(
        keeps, yoke, 1 / (2 * height), OptionalDouble.of(yoke.drop() / (2 * yoke.leg() * height)));
  }

  private static List<RatioDesign> ofBar(HookedBar bar, double square) {
    TwoAxisBody body = bar.body();
    double upper = body.swingInertia() / body.firstMoment() / square;
    double half = (body.mass() * upper - 2 * body.firstMoment()) / (2 * body.mass());
    double product = body.swingInertia() * (1 - 1 / square) / body.mass();
    double root = half * half - product;
    List<RatioDesign> designs = new ArrayList<>();
    if (root >= 0) {
      // The root of larger size first, then the other from the product, so that none cancels.
      double large = half + Math.copySign(Math.sqrt(root), half);
      double small = large == 0 ? 0 : product / large;
      for (double offset : new double[] {Math.min(large, small), Math.max(large, small)}) {
        if (offset >= 0 && (designs.isEmpty() || large != small)) {
          designs.add(hungAt(bar, offset));
        }
      }
    }
    return designs;
  }

  private static RatioDesign hungAt(HookedBar bar, double offset) {
    HookedBar hung = new HookedBar(offset + 0.0, bar.parts(), bar.bobArm());
    return new RatioDesign(Keeps.BAR, hung, slope(hung.body()), OptionalDouble.empty());
  }

  /** |d ln v / dd| = |M/(M d + S1) - 2 (M d + S1)/A(0)| / 2. */
  private static double slope(TwoAxisBody body) {
    double moment = body.mass() * body.axisOffset() + body.firstMoment();
    return Math.abs(body.mass() / moment - 2 * moment / body.upperInertia(0, 1)) / 2;
  }

  /**
   * The hook offset of a bar at which the swing along y is quickest, so that v is greatest: (M d +
   * S1)^2 = M I - S1^2; 0 where it gets slower from there on.
   */
  public static double quickestOffset(HookedBar bar) {
    TwoAxisBody body = bar.body();
    double first = body.firstMoment();
    double spread = Math.sqrt(Math.max(0, body.mass() * body.swingInertia() - first * first));
    return Math.max(0, (spread - first) / body.mass());
  }

  /**
   * Relative error of v with which the figure, in {@value #CLOSINGS} closings, goes through an
   * eighth of its forms: it goes through all when that many closings times X Y times the error are
   * 1.
   */
  public static double tolerance(WholeRatio ratio) {
    return FORMS / (CLOSINGS * ratio.x() * ratio.y());
  }

  /**
   * Error of a length that {@link #tolerance} allows [m].
   *
   * @param sensitivity one of this design's, above 0
   */
  public static double hand(WholeRatio ratio, double sensitivity) {
    return tolerance(ratio) / sensitivity;
  }

  /**
   * Size of a swing whose period is longer than a small one's by the tolerance, theta^2/16 [rad]:
   * the first term of the elliptic integral (NIST Digital Library of Mathematical Functions,
   * 19.5.1).
   */
  public static double largestSwing(WholeRatio ratio) {
    return 4 * Math.sqrt(tolerance(ratio));
  }

  /** How far along x the bob of a Y cord swings until one of its upper cords goes slack [m]. */
  public static double tightUpTo(Yoke yoke) {
    return yoke.leg() * Math.sin(Math.atan2(yoke.span() / 2, yoke.drop()));
  }
}
