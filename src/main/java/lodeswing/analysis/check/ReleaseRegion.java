package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The disc that the bob is released from, as places at which functions are looked at: a polar grid,
 * finer about the magnets, and from its best places on a search by steps that get shorter.
 */
final class ReleaseRegion {

  private static final int RINGS = 12;
  private static final int SPOKES = 32;
  private static final int ABOUT = 8;
  private static final int SEARCHED = 3;
  private static final double FINEST = 1e-4;

  private final RigModel model;
  private final double radius;
  private final List<double[]> places = new ArrayList<>();

  ReleaseRegion(RigModel model, double radius) {
    this.model = model;
    this.radius = radius;
    add(0, 0);
    for (int ring = 1; ring <= RINGS; ring++) {
      round(0, 0, radius * ring / RINGS, SPOKES);
    }
    model
        .magnets()
        .forEach(
            magnet -> {
              add(magnet.x(), magnet.y());
              round(magnet.x(), magnet.y(), model.detail() / 2, ABOUT);
              round(magnet.x(), magnet.y(), model.detail() / 2 + magnet.radius(), ABOUT);
            });
  }

  private void round(double x, double y, double distance, int count) {
    for (int k = 0; k < count; k++) {
      double angle = 2 * Math.PI * k / count;
      add(x + distance * StrictMath.cos(angle), y + distance * StrictMath.sin(angle));
    }
  }

  private void add(double x, double y) {
    if (Math.hypot(x, y) <= radius * (1 + 1e-12)) {
      model.state(x, y).ifPresent(state -> places.add(new double[] {x, y, state[0], state[1]}));
    }
  }

  /** A function of a place's coordinates. */
  @FunctionalInterface
  interface PlaceFunction {

    /** Its value; NaN where it has none. */
    double at(double q0, double q1);
  }

  /**
   * A value with its place.
   *
   * @param x plan position
   * @param y plan position
   */
  record Found(double value, double q0, double q1, double x, double y) {}

  /** The same function where the bob touches nothing; NaN elsewhere. */
  PlaceFunction clear(PlaceFunction function) {
    return (q0, q1) -> model.room(q0, q1) > 0 ? function.at(q0, q1) : Double.NaN;
  }

  /** The least value. */
  Optional<Found> least(PlaceFunction function) {
    List<Found> found = new ArrayList<>();
    for (double[] place : places) {
      double value = function.at(place[2], place[3]);
      if (!Double.isNaN(value)) {
        found.add(new Found(value, place[2], place[3], place[0], place[1]));
      }
    }
    found.sort((a, b) -> Double.compare(a.value(), b.value()));
    return found.stream()
        .limit(SEARCHED)
        .map(start -> searched(function, start))
        .min((a, b) -> Double.compare(a.value(), b.value()));
  }

  /** The greatest value. */
  Optional<Found> greatest(PlaceFunction function) {
    return least((q0, q1) -> -function.at(q0, q1))
        .map(f -> new Found(-f.value(), f.q0(), f.q1(), f.x(), f.y()));
  }

  private Found searched(PlaceFunction function, Found start) {
    Found best = start;
    double step = radius / RINGS / 2;
    while (step > FINEST * radius) {
      Found next = neighbour(function, best, step);
      if (next.value() < best.value()) {
        best = next;
      } else {
        step /= 2;
      }
    }
    return best;
  }

  private Found neighbour(PlaceFunction function, Found from, double step) {
    Found best = from;
    for (int k = 0; k < 4; k++) {
      double x = from.x() + (k == 0 ? step : k == 1 ? -step : 0);
      double y = from.y() + (k == 2 ? step : k == 3 ? -step : 0);
      Optional<double[]> state = Math.hypot(x, y) <= radius ? model.state(x, y) : Optional.empty();
      if (state.isPresent()) {
        double[] q = state.get();
        double value = function.at(q[0], q[1]);
        if (value < best.value()) {
          best = new Found(value, q[0], q[1], x, y);
        }
      }
    }
    return best;
  }
}
