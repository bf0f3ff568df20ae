package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for labels: of the places about a thing, the one that is nearest and covers least of
 * the path. No label covers another label, a mark or the line that leads to a label, and none of a
 * magnet covers another magnet or is led to across one; where no such place is left, there is none.
 * Greedy and in a fixed order, so the same picture gives the same places. Works in pixels of the
 * page.
 */
final class LabelPlacing {
  private static final double CELL = 4;
  private static final double[] GAPS = {4, 8, 13, 20, 30, 42, 58, 78};
  private static final int DIRECTIONS = 24;

  /** Distance from the thing beyond which a line leads to its label: less than a label's height. */
  private static final double LED_BEYOND = 11;

  private static final double DISTANCE_COST = 1.6;
  private static final double LEADER_COST = 14;
  private static final double INK_COST = 9;
  private static final double MAGNET_COST = 240;
  private static final double CROSSING_COST = 60;
  private static final double DOUBT_COST = 40;
  private static final double SIDEWAYS_COST = 3;

  private final double left;
  private final double top;
  private final double right;
  private final double bottom;
  private final int columns;
  private final boolean[] inked;
  private final List<Box> taken = new ArrayList<>();
  private final List<Line> leaders = new ArrayList<>();
  private final List<Footprint> magnets = new ArrayList<>();

  LabelPlacing(Sheet sheet) {
    left = sheet.plotLeft();
    top = sheet.plotTop();
    right = left + sheet.plotWidth();
    bottom = sheet.plotBottom();
    columns = (int) Math.ceil((right - left) / CELL) + 1;
    int rows = (int) Math.ceil((bottom - top) / CELL) + 1;
    inked = new boolean[columns * rows];
  }

  /** An upright box in pixels, y downwards. */
  record Box(double x, double y, double width, double height) {
    static Box about(double x, double y, double width, double height) {
      return new Box(x - width / 2, y - height / 2, width, height);
    }

    double middleX() {
      return x + width / 2;
    }

    double middleY() {
      return y + height / 2;
    }

    boolean covers(Box other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }

    boolean holds(double px, double py) {
      return distance(px, py) == 0;
    }

    /** The place in it that is nearest to a place. */
    double[] nearest(double px, double py) {
      return new double[] {
        Math.max(x, Math.min(x + width, px)), Math.max(y, Math.min(y + height, py))
      };
    }

    double distance(double px, double py) {
      return Math.hypot(
          Math.max(0, Math.abs(px - middleX()) - width / 2),
          Math.max(0, Math.abs(py - middleY()) - height / 2));
    }

    /** Half of the extent along a direction of length 1. */
    double span(double nx, double ny) {
      return width / 2 * Math.abs(nx) + height / 2 * Math.abs(ny);
    }
  }

  /** A straight line that leads from a thing to its label. */
  record Line(double fromX, double fromY, double toX, double toY) {

    double length() {
      return Math.hypot(toX - fromX, toY - fromY);
    }

    /** Whether it passes through a box: the part within each pair of sides (Liang and Barsky). */
    boolean meets(Box box) {
      double[] start = {fromX - box.x, fromY - box.y};
      double[] way = {toX - fromX, toY - fromY};
      double[] size = {box.width, box.height};
      double in = 0;
      double out = 1;
      for (int axis = 0; axis < 2; axis++) {
        if (way[axis] == 0) {
          if (start[axis] <= 0 || start[axis] >= size[axis]) {
            return false;
          }
        } else {
          double one = -start[axis] / way[axis];
          double other = (size[axis] - start[axis]) / way[axis];
          in = Math.max(in, Math.min(one, other));
          out = Math.min(out, Math.max(one, other));
        }
      }
      return in < out;
    }

    boolean crosses(Line other) {
      return side(other.fromX, other.fromY) * side(other.toX, other.toY) < 0
          && other.side(fromX, fromY) * other.side(toX, toY) < 0;
    }

    private double side(double px, double py) {
      return (toX - fromX) * (py - fromY) - (toY - fromY) * (px - fromX);
    }

    /** Whether its place nearest to the middle of a thing lies on the thing. */
    boolean passes(Footprint thing) {
      double dx = toX - fromX;
      double dy = toY - fromY;
      double along = (thing.x() - fromX) * dx + (thing.y() - fromY) * dy;
      double share = Math.max(0, Math.min(1, along / Math.max(1e-9, dx * dx + dy * dy)));
      return thing.holds(fromX + share * dx, fromY + share * dy);
    }
  }

  /**
   * A place found.
   *
   * @param box where
   * @param leader a line that leads to it, where it stands off or nearer to another thing
   */
  record Place(Box box, Optional<Line> leader) {}

  /** Tells that the path runs along a straight piece. */
  void ink(double fromX, double fromY, double toX, double toY) {
    int steps = 1 + (int) (Math.hypot(toX - fromX, toY - fromY) / (CELL / 2));
    for (int i = 0; i <= steps; i++) {
      double x = fromX + (toX - fromX) * i / steps;
      double y = fromY + (toY - fromY) * i / steps;
      int row = (int) Math.floor((y - top) / CELL);
      int column = (int) Math.floor((x - left) / CELL);
      int cell = row * columns + column;
      if (row >= 0 && column >= 0 && column < columns && cell < inked.length) {
        inked[cell] = true;
      }
    }
  }

  /** Tells that a box must stay clear. */
  void keepClear(Box box) {
    taken.add(box);
  }

  /** Tells where a magnet lies, which labels of others must not cover. */
  void magnet(Footprint magnet) {
    magnets.add(magnet);
  }

  /** Takes a place that was found. */
  void take(Place place) {
    taken.add(place.box());
    place.leader().ifPresent(leaders::add);
  }

  /** Whether a box lies in the plot, clear of all that is taken and of other magnets than one. */
  boolean free(Box box, Footprint own) {
    return clear(box) && magnets.stream().allMatch(m -> m.equals(own) || m.distance(box) > 0);
  }

  /** The best place for the label of a magnet; nothing is taken yet. */
  Optional<Place> besideMagnet(Footprint magnet, double width, double height) {
    return find(magnet, width, height, true);
  }

  /** The best place for the label of a mark, which may cover a magnet if it must. */
  Optional<Place> besideMark(Footprint mark, double width, double height) {
    return find(mark, width, height, false);
  }

  private Optional<Place> find(Footprint thing, double width, double height, boolean magnet) {
    Optional<Place> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (double gap : GAPS) {
      for (int d = 0; d < DIRECTIONS && gap * DISTANCE_COST < least; d++) {
        double angle = 2 * Math.PI * d / DIRECTIONS;
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double away = thing.away(ux, uy, width, height, gap);
        Box box = Box.about(thing.x() + away * ux, thing.y() + away * uy, width, height);
        if (clear(box)) {
          Candidate candidate = candidate(thing, box, magnet);
          double cost = candidate.cost() + gap * DISTANCE_COST + SIDEWAYS_COST * (1 - ux);
          if (cost < least) {
            least = cost;
            best = Optional.of(candidate.place());
          }
        }
      }
    }
    return best;
  }

  private record Candidate(Place place, double cost) {}

  private Candidate candidate(Footprint thing, Box box, boolean magnet) {
    double own = thing.distance(box);
    double cost = INK_COST * inkUnder(box);
    boolean doubtful = false;
    for (Footprint other : magnets) {
      if (other.equals(thing) || box.distance(other.x(), other.y()) > other.reach() + own + CELL) {
        continue;
      }
      double distance = other.distance(box);
      if (distance == 0) {
        cost += magnet ? Double.POSITIVE_INFINITY : MAGNET_COST;
      } else if (magnet && distance <= own + CELL) {
        cost += DOUBT_COST;
        doubtful |= distance <= own;
      }
    }
    if (own <= LED_BEYOND && !doubtful) {
      return new Candidate(new Place(box, Optional.empty()), cost);
    }
    Line leader = thing.lineTo(box);
    return new Candidate(
        new Place(box, Optional.of(leader)), cost + LEADER_COST + cost(leader, thing, magnet));
  }

  private double cost(Line leader, Footprint thing, boolean magnet) {
    double cost = 0;
    for (Box box : taken) {
      if (leader.meets(box) && !box.holds(thing.x(), thing.y())) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Line other : leaders) {
      cost += leader.crosses(other) ? CROSSING_COST : 0;
    }
    for (Footprint other : magnets) {
      // A mark may lie on a magnet, which its leader has to leave.
      boolean beneath = other.holds(thing.x(), thing.y());
      if (!beneath && leader.passes(other)) {
        cost += magnet ? Double.POSITIVE_INFINITY : MAGNET_COST;
      }
    }
    return cost;
  }

  private boolean clear(Box box) {
    return box.x() >= left
        && box.x() + box.width() <= right
        && box.y() >= top
        && box.y() + box.height() <= bottom
        && taken.stream().noneMatch(box::covers)
        && leaders.stream().noneMatch(leader -> leader.meets(box));
  }

  private int inkUnder(Box box) {
    int count = 0;
    int firstRow = Math.max(0, (int) ((box.y() - top) / CELL));
    int lastRow = (int) ((box.y() + box.height() - top) / CELL);
    int firstColumn = Math.max(0, (int) ((box.x() - left) / CELL));
    int lastColumn = Math.min(columns - 1, (int) ((box.x() + box.width() - left) / CELL));
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        int cell = row * columns + column;
        if (cell < inked.length && inked[cell]) {
          count++;
        }
      }
    }
    return count;
  }
}
