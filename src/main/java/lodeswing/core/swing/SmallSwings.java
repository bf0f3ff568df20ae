package lodeswing.core.swing;

import java.util.OptionalDouble;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * The two small swings of a rig without its magnets, and what loss and size do to them.
 *
 * <p>Losses are those of the linear law alone: a swing's size falls as exp(-gamma t/2) (L. D.
 * Landau, E. M. Lifshitz, Mechanics, 3rd ed. (1976), section 25). For the swing in y gamma = c (d +
 * s_b)^2 / A(0), as for the swing in x gamma = c s_b^2 / (S2 + It) with the terms of {@link
 * TwoAxisBody}.
 *
 * @param rateX angular rate of the small swing along x, without loss [rad/s on the bench]
 * @param rateY angular rate of the small swing along y
 * @param lossX gamma of the swing along x [1/s]; empty where the loss has another law too
 * @param lossY gamma of the swing along y
 * @param turning turn of an ellipse's axes in a unit of time, per plan area a b and rate [1/m^2]:
 *     3/(8 s_b^2) for a round rig, 0 where the swings are harmonic at every size, empty where the
 *     rig is not round
 */
public record SmallSwings(
    double rateX,
    double rateY,
    OptionalDouble lossX,
    OptionalDouble lossY,
    OptionalDouble turning) {

  /**
   * Share of a bar's own moment up to which it turns an ellipse as a cord does, within a percent.
   */
  private static final double THIN = 0.01;

  /** The swings of a layout, its magnets set aside. */
  public static SmallSwings of(Layout layout) {
    if (layout instanceof TextbookLayout textbook) {
      OptionalDouble drag = OptionalDouble.of(textbook.drag());
      double rate = textbook.omega0();
      return new SmallSwings(rate, rate, drag, drag, OptionalDouble.of(0));
    }
    BenchLayout bench = (BenchLayout) layout;
    TwoAxisBody body = bench.suspension().body();
    LossLaw loss = bench.loss();
    boolean linear = loss.drag().isEmpty() && loss.pivotTorque() == 0;
    double arm = body.bobArm() + body.axisOffset();
    double lossY = loss.linear() * arm * arm / body.upperInertia(0, 1);
    boolean round = body.axisOffset() == 0 && body.axialInertia() <= THIN * body.swingInertia();
    return new SmallSwings(
        body.rateX(bench.gravity()),
        body.rateY(bench.gravity()),
        linear ? OptionalDouble.of(loss.linearRate(body)) : OptionalDouble.empty(),
        linear ? OptionalDouble.of(lossY) : OptionalDouble.empty(),
        round
            ? OptionalDouble.of(3 / (8 * body.bobArm() * body.bobArm()))
            : OptionalDouble.empty());
  }

  /** Period of the small swing along x. */
  public double periodX() {
    return 2 * Math.PI / rateX;
  }

  /** Period of the small swing along y. */
  public double periodY() {
    return 2 * Math.PI / rateY;
  }

  /**
   * Period of the swing along one axis that a state has, were it alone: that of a release.
   *
   * @param layout the layout whose swings these are
   * @param state two coordinates and their rates, four numbers
   * @param alongX whether that along x is meant
   * @return empty where it would turn over
   */
  public OptionalDouble periodAt(Layout layout, double[] state, boolean alongX) {
    double rate = alongX ? rateX : rateY;
    int axis = alongX ? 0 : 1;
    return layout instanceof TextbookLayout
        ? OptionalDouble.of(2 * Math.PI / rate)
        : LargeSwing.period(rate, state[axis], state[2 + axis]);
  }

  /** Swings along y to one along x: the ratio of the two frequencies. */
  public double ratio() {
    return rateY / rateX;
  }

  /** Whether both swings take the same time, to rounding. */
  public boolean alike() {
    return Math.abs(ratio() - 1) < 1e-12;
  }

  /**
   * Rate at which the axes of the ellipse of a release turn at first, anticlockwise above 0
   * [rad/s]; empty where the rig is not round.
   *
   * <p>Omega = 3/8 omega a b / l^2, the way the bob goes round: G. B. Airy, Mon. Not. R. Astron.
   * Soc. 11 (1851) 160; the next order is (a/l)^2 smaller. A b with its sign is the area of the
   * parallelogram of place and velocity over omega. The average of the fourth order of the energy
   * over a swing gives the same for any body that hangs from one point: with theta angles, omega^2
   * (E^2/64 - 3/16 (theta_a theta_b)^2), whose derivative by the angular momentum is 3/8 omega
   * theta_a theta_b. A bar's own moment about its axis lowers it by about 2/3 Ia/(S2 + It).
   *
   * @param x place of the release
   * @param y place of the release
   * @param vx velocity of the release
   * @param vy velocity of the release
   */
  public OptionalDouble precession(double x, double y, double vx, double vy) {
    return turning.isPresent()
        ? OptionalDouble.of(turning.getAsDouble() * (x * vy - y * vx))
        : OptionalDouble.empty();
  }

  /**
   * Time in which a swing has half its size, 2 ln 2/gamma; empty without loss.
   *
   * @param gamma of the swing
   */
  public static OptionalDouble halvingTime(double gamma) {
    return gamma > 0 ? OptionalDouble.of(2 * Math.log(2) / gamma) : OptionalDouble.empty();
  }

  /**
   * Period of a small swing with its loss, 2 pi / (omega^2 - gamma^2/4)^(1/2); empty where it
   * creeps back without swinging.
   *
   * @param rate of the swing without loss
   * @param gamma of the swing
   */
  public static OptionalDouble periodWithLoss(double rate, double gamma) {
    double square = rate * rate - gamma * gamma / 4;
    return square > 0 ? OptionalDouble.of(2 * Math.PI / Math.sqrt(square)) : OptionalDouble.empty();
  }
}
