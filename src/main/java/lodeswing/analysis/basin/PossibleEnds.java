package lodeswing.analysis.basin;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.window.BasinWindow;

/**
 * Which special ends the releases at rest of a window can have.
 *
 * <p>Energy never rises, so a bob let go at rest stays where the potential is no higher than at the
 * highest release. A limit can be met only at such a place. Both are looked for on grids; what a
 * figure changes over a cell is allowed for, so that an end is left out only where it cannot occur.
 */
public final class PossibleEnds {

  private static final int CELLS = 32;

  /** Places over a cell: corners, middles of sides, middle. */
  private static final int NODES = 9;

  /** How often a cell in doubt is cut into quarters. */
  private static final int QUARTERINGS = 5;

  private final Motion motion;
  private final BasinWindow window;
  private final Set<SpecialEnd> ends = EnumSet.of(SpecialEnd.UNSETTLED);
  private double highest = Double.NEGATIVE_INFINITY;

  private PossibleEnds(Landscape landscape, BasinWindow window) {
    this.motion = landscape.motion();
    this.window = window;
    if (landscape.layout() instanceof BenchLayout bench && bench.loss().pivotTorque() > 0) {
      ends.add(SpecialEnd.HELD);
    }
    lookOverWindow();
    for (Limit limit : motion.limits()) {
      SpecialEnd end =
          switch (limit.kind()) {
            case MAGNET_CONTACT -> SpecialEnd.MAGNET_CONTACT;
            case PLATE_CONTACT -> SpecialEnd.PLATE_CONTACT;
            case SUSPENSION_SLACK -> SpecialEnd.SUSPENSION_SLACK;
            case ANGLE_LIMIT -> SpecialEnd.ANGLE_LIMIT;
          };
      if (any(0, 0, motion.reach(), (x, y, half) -> met(limit, x, y, half, QUARTERINGS))) {
        ends.add(end);
      }
    }
  }

  /** The special ends that can occur, in their order; undecided is always among them. */
  public static Set<SpecialEnd> of(Landscape landscape, BasinWindow window) {
    return EnumSet.copyOf(new PossibleEnds(landscape, window).ends);
  }

  /** A square about a middle. */
  @FunctionalInterface
  private interface Cell {
    boolean test(double x, double y, double half);
  }

  /** Whether anything holds of any of the cells that a square is cut into. */
  private static boolean any(double x, double y, double half, Cell cell) {
    double part = half / CELLS;
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        if (cell.test(x - half + (2 * i + 1) * part, y - half + (2 * j + 1) * part, part)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Looks how high the potential is at releases, and whether every place can be one. */
  private void lookOverWindow() {
    any(window.x(), window.y(), window.halfWidth(), this::lookOverCell);
    for (Limit limit : motion.limits()) {
      if (any(
          window.x(),
          window.y(),
          window.halfWidth(),
          (x, y, half) -> barred(limit, x, y, half, QUARTERINGS))) {
        ends.add(SpecialEnd.CANNOT_START);
      }
    }
  }

  private boolean lookOverCell(double x, double y, double half) {
    Span energy = new Span();
    for (int node = 0; node < NODES; node++) {
      Optional<double[]> start = release(x, y, half, node);
      if (start.isPresent()) {
        energy.add(motion.potential(start.get()[0], start.get()[1]));
      } else {
        // From the border of what the suspension allows a bob gets anywhere.
        ends.add(SpecialEnd.CANNOT_START);
        highest = Double.POSITIVE_INFINITY;
      }
    }
    double most = energy.most + (energy.most - energy.least);
    highest = most >= highest || Double.isNaN(most) ? most : highest;
    return false;
  }

  /** Whether a limit may forbid a release in a cell of the window. */
  private boolean barred(Limit limit, double x, double y, double half, int quarterings) {
    Span margin = new Span();
    for (int node = 0; node < NODES; node++) {
      release(x, y, half, node).ifPresent(start -> margin.add(limit.margin(start)));
    }
    return margin.mayVanish()
        && (quarterings == 0
            || margin.most <= 0
            || quarters(x, y, half, (a, b, c) -> barred(limit, a, b, c, quarterings - 1)));
  }

  /** Whether a limit may be met in a cell of the motion's own coordinates. */
  private boolean met(Limit limit, double q0, double q1, double half, int quarterings) {
    Span margin = new Span();
    for (int node = 0; node < NODES; node++) {
      margin.add(limit.leastMargin(at(q0, half, node % 3), at(q1, half, node / 3)));
    }
    if (!margin.mayVanish()) {
      return false;
    }
    Span energy = new Span();
    for (int node = 0; node < NODES; node++) {
      energy.add(motion.potential(at(q0, half, node % 3), at(q1, half, node / 3)));
    }
    if (energy.least - (energy.most - energy.least) > highest) {
      return false;
    }
    return quarterings == 0
        || (margin.most <= 0 && energy.most <= highest)
        || quarters(q0, q1, half, (a, b, c) -> met(limit, a, b, c, quarterings - 1));
  }

  private static boolean quarters(double x, double y, double half, Cell cell) {
    double part = half / 2;
    return cell.test(x - part, y - part, part)
        || cell.test(x + part, y - part, part)
        || cell.test(x - part, y + part, part)
        || cell.test(x + part, y + part, part);
  }

  private Optional<double[]> release(double x, double y, double half, int node) {
    return motion.toState(new Release(at(x, half, node % 3), at(y, half, node / 3), 0, 0));
  }

  /** One of three places over a side: its ends and its middle. */
  private static double at(double middle, double half, int third) {
    return middle + (third - 1) * half;
  }

  /** Least and greatest of some figures; one that is no number stays. */
  private static final class Span {
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    void add(double figure) {
      least = Math.min(least, figure);
      most = Math.max(most, figure);
    }

    /** Whether a figure may reach 0 between nine places where it was seen. */
    boolean mayVanish() {
      return least != Double.POSITIVE_INFINITY && !(least > most - least);
    }
  }
}
