package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds free room for texts beside things, none over another. */
final class Crowd {

  private static final double GAP = 0.8 * Ink.MM;

  /** Directions in which a text may stand off, the best first: below, above, right, left, ... */
  private static final double[][] WAYS = {
    {0, -1}, {0, 1}, {1, 0}, {-1, 0}, {0.8, -0.6}, {-0.8, -0.6}, {0.8, 0.6}, {-0.8, 0.6}
  };

  private final List<Body> bodies = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();
  private final List<Box> lines = new ArrayList<>();

  /**
   * A thing to be kept clear of.
   *
   * @param x its middle
   * @param y its middle
   * @param across half of its extent along x
   * @param up half of its extent along y
   * @param round whether it is a disc and not a box
   */
  record Body(double x, double y, double across, double up, boolean round) {

    static Body disc(double x, double y, double reach) {
      return new Body(x, y, reach, reach, true);
    }
  }

  /** A box by its lower left corner. */
  record Box(double x, double y, double width, double height) {

    boolean meets(Box other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }

    boolean meets(Body body) {
      double dx = Math.max(0, Math.max(x - body.x, body.x - x - width));
      double dy = Math.max(0, Math.max(y - body.y, body.y - y - height));
      return body.round ? Math.hypot(dx, dy) < body.across : dx < body.across && dy < body.up;
    }
  }

  void keepClear(Body body) {
    bodies.add(body);
  }

  /** A fine line, over which a text may lie where there is no better place. */
  void line(Box box) {
    lines.add(box);
  }

  /** A free box beside a thing, which is then taken; empty where there is none. */
  Optional<Box> beside(Body body, double width, double height) {
    Optional<Box> found = beside(body, width, height, false);
    if (found.isEmpty()) {
      found = beside(body, width, height, true);
    }
    found.ifPresent(boxes::add);
    return found;
  }

  private Optional<Box> beside(Body body, double width, double height, boolean overLines) {
    return Arrays.stream(WAYS)
        .map(way -> at(body, way, width, height))
        .filter(box -> bodies.stream().noneMatch(box::meets))
        .filter(box -> boxes.stream().noneMatch(box::meets))
        .filter(box -> overLines || lines.stream().noneMatch(box::meets))
        .findFirst();
  }

  private static Box at(Body body, double[] way, double width, double height) {
    // Beside a corner of a box a text stands at the corner, beside a disc nearer.
    double wayX = body.round ? way[0] : Math.signum(way[0]);
    double wayY = body.round ? way[1] : Math.signum(way[1]);
    double x = body.x + wayX * (body.across + GAP);
    double y = body.y + wayY * (body.up + GAP);
    return new Box(
        x - width * (1 - Math.signum(wayX)) / 2,
        y - height * (1 - Math.signum(wayY)) / 2,
        width,
        height);
  }
}
