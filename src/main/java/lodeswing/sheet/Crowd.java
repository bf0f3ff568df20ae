package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds free room for texts beside round things, none over another. */
final class Crowd {

  private static final double GAP = 0.8 * Ink.MM;

  /** Directions in which a text may stand off, the best first: below, above, right, left, ... */
  private static final double[][] WAYS = {
    {0, -1}, {0, 1}, {1, 0}, {-1, 0}, {0.8, -0.6}, {-0.8, -0.6}, {0.8, 0.6}, {-0.8, 0.6}
  };

  private final List<Round> rounds = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  /** A round thing to be kept clear of. */
  record Round(double x, double y, double reach) {}

  /** A box by its lower left corner. */
  record Box(double x, double y, double width, double height) {

    boolean meets(Box other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }

    boolean meets(Round round) {
      double dx = Math.max(0, Math.max(x - round.x, round.x - x - width));
      double dy = Math.max(0, Math.max(y - round.y, round.y - y - height));
      return Math.hypot(dx, dy) < round.reach;
    }
  }

  void keepClear(Round round) {
    rounds.add(round);
  }

  void keepClear(Box box) {
    boxes.add(box);
  }

  /** A free box beside a round thing, which is then taken; empty where there is none. */
  Optional<Box> beside(Round round, double width, double height) {
    for (double[] way : WAYS) {
      Box box = at(round, way, width, height);
      if (rounds.stream().noneMatch(box::meets) && boxes.stream().noneMatch(box::meets)) {
        boxes.add(box);
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }

  private static Box at(Round round, double[] way, double width, double height) {
    double reach = round.reach + GAP;
    double x = round.x + way[0] * reach;
    double y = round.y + way[1] * reach;
    return new Box(
        x - width * (1 - Math.signum(way[0])) / 2,
        y - height * (1 - Math.signum(way[1])) / 2,
        width,
        height);
  }
}
