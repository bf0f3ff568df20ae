package lodeswing.analysis.check;

import java.util.Optional;
import lodeswing.core.rest.ScanRegion;

/**
 * Where a magnet pulls or pushes the bob sideways most, and what the weight does there.
 *
 * @param magnet its index
 * @param pull of all magnets there, sideways [N on the bench]
 * @param weight of the bob there, sideways; at least that of a place half a magnet off the middle
 */
record StrongestPull(int magnet, double pull, double weight) {

  private static final int DIRECTIONS = 24;
  private static final double[] DISTANCES = {0.5, 1, 1.5};

  double ratio() {
    return pull / weight;
  }

  /** The one that weighs most against the weight; empty where nothing pulls. */
  static Optional<StrongestPull> againstWeight(RigModel model) {
    Optional<StrongestPull> best = Optional.empty();
    for (int i = 0; model.pulls() && i < model.magnets().size(); i++) {
      Optional<StrongestPull> found = of(model, i);
      if (found.isPresent() && (best.isEmpty() || found.get().ratio() > best.get().ratio())) {
        best = found;
      }
    }
    return best;
  }

  private static Optional<StrongestPull> of(RigModel model, int magnet) {
    ScanRegion.MagnetPlace place = model.magnets().get(magnet);
    double size = model.detail() / 2 + place.radius();
    Optional<double[]> beside = model.state(size / 2, 0);
    double least = beside.map(q -> model.weightPull(q[0], q[1])).orElse(0.0);
    Optional<StrongestPull> best = Optional.empty();
    for (double distance : DISTANCES) {
      for (int k = 0; k < DIRECTIONS; k++) {
        double angle = 2 * Math.PI * k / DIRECTIONS;
        Optional<double[]> state =
            model.state(
                place.x() + distance * size * StrictMath.cos(angle),
                place.y() + distance * size * StrictMath.sin(angle));
        if (state.isPresent() && model.room(state.get()[0], state.get()[1]) > 0) {
          double[] q = state.get();
          double pull = model.pull(q[0], q[1]);
          if (best.isEmpty() || pull > best.get().pull()) {
            double weight = Math.max(least, model.weightPull(q[0], q[1]));
            best = Optional.of(new StrongestPull(magnet, pull, weight));
          }
        }
      }
    }
    return best;
  }
}
