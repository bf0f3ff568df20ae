package lodeswing.core.chance;

import lodeswing.core.rig.Release;
import lodeswing.core.statistics.ShiftedSobol;

/** The tries of a hand, one after the other, always the same ones for a seed. For one thread. */
final class Tries {

  private final HandSpread hand;
  private final ShiftedSobol points;
  private final double[] place = new double[2];

  Tries(HandSpread hand, long seed) {
    this.hand = hand;
    this.points = new ShiftedSobol(hand.speedDeviation() > 0 ? 4 : 2, seed);
  }

  /** The next releases: plan x, y, vx, vy side by side. */
  double[] next(int count) {
    Release aim = hand.aim();
    double[] out = new double[4 * count];
    for (int i = 0; i < count; i++) {
      double[] point = points.next();
      while (!hand.place().place(point[0], point[1], place)) {
        point = points.next();
      }
      out[4 * i] = aim.x() + place[0];
      out[4 * i + 1] = aim.y() + place[1];
      out[4 * i + 2] = aim.vx();
      out[4 * i + 3] = aim.vy();
      if (point.length == 4) {
        out[4 * i + 2] += hand.speedDeviation() * NormalSpread.quantile(point[2]);
        out[4 * i + 3] += hand.speedDeviation() * NormalSpread.quantile(point[3]);
      }
    }
    return out;
  }
}
