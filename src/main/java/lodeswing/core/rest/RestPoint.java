package lodeswing.core.rest;

import java.util.List;
import java.util.OptionalInt;

/**
 * A stable rest point: a minimum of the potential where the model holds.
 *
 * @param index its number in the result, from 0: those over a magnet first, in the magnets' order;
 *     then by plan angle, anticlockwise from +x, and by distance from the origin
 * @param q0 place
 * @param q1 place
 * @param x plan position
 * @param y plan position
 * @param potential potential energy there
 * @param barrier the lowest way out of its well
 * @param smallSwing periods of small swings about it, without loss
 * @param surroundings the magnets about it
 * @param continuum whether it stands for a whole line of rest points, a round valley
 */
public record RestPoint(
    int index,
    double q0,
    double q1,
    double x,
    double y,
    double potential,
    Barrier barrier,
    SmallSwing smallSwing,
    Surroundings surroundings,
    boolean continuum) {

  /**
   * The lowest way out of a well.
   *
   * @param passEnergy energy above which it is open [J on the bench]; where nothing else can be
   *     reached, the potential at the lowest place of the scanned square's edge
   * @param height that energy above the rest point
   * @param error how far passEnergy may lie above the true one
   * @param beyond what lies behind it
   * @param saddle index of the saddle that it leads over; empty where it leads straight into an
   *     unsafe zone or to nothing
   */
  public record Barrier(
      double passEnergy, double height, double error, Side beyond, OptionalInt saddle) {}

  /**
   * Periods of small swings about a rest point: 2 pi over the roots of the eigenvalues of the
   * Hessian against the mass matrix (Goldstein, Poole and Safko, Classical Mechanics, 2002, section
   * 6.2).
   *
   * @param shortPeriod the shorter one [s on the bench]
   * @param longPeriod the longer one; infinite in a round valley
   */
  public record SmallSwing(double shortPeriod, double longPeriod) {}

  /**
   * The magnets about a rest point.
   *
   * @param owner the magnet it belongs to by the rule of {@link ScanRegion#of}, by index; empty
   *     where it belongs to none
   * @param nearest up to two magnets, the nearest first
   * @param overWeakField whether it lies over no magnet and every magnet about it (up to two length
   *     scales farther than the nearest) repels: a place where the field is weak
   */
  public record Surroundings(OptionalInt owner, List<NearMagnet> nearest, boolean overWeakField) {

    public Surroundings {
      nearest = List.copyOf(nearest);
    }
  }

  /**
   * A magnet near a rest point.
   *
   * @param magnet its index
   * @param distance plan distance between its centre and the rest point [plan unit]
   */
  public record NearMagnet(int magnet, double distance) {}
}
