package lodeswing.core.chance;

import lodeswing.core.rig.Release;

/**
 * How a hand wanders about the release that it aims at.
 *
 * @param aim the release that is meant
 * @param place where it lets go, from the aimed place
 * @param speedDeviation standard deviation of the push along either axis, 0 or above [plan unit a
 *     second]
 */
public record HandSpread(Release aim, Spread place, double speedDeviation) {

  /**
   * Its size in plan, a push counted as the way that it leads to.
   *
   * @param rate of small swings [1/s]
   */
  double size(double rate) {
    return Math.hypot(place.size(), speedDeviation / rate);
  }

  /**
   * The largest swing that it begins, about.
   *
   * @param rate of small swings [1/s]
   */
  double reach(double rate) {
    double speed = Math.hypot(aim.vx(), aim.vy()) + 4 * speedDeviation;
    return Math.hypot(Math.hypot(aim.x(), aim.y()) + place.reach(), speed / rate);
  }
}
