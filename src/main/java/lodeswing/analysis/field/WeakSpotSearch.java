package lodeswing.analysis.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.core.field.SurfaceField;
import lodeswing.core.integrate.lane.LaneProvider;

/**
 * Finds where the field over a surface, and its part in the plane, are weak, and how far that
 * reaches.
 *
 * <p>Zeros of the part in the plane are found by Newton's method from the cells of a grid; the sum
 * of their indices must be what the field turns along the window's edge (Poincare and Hopf), or
 * else the grid is halved. A pair of zeros within one cell whose indices cancel may still be
 * missed.
 */
public final class WeakSpotSearch {

  private static final int FIRST_SIDE = 193;
  private static final int LAST_SIDE = 769;
  private static final int ZONE_SIDE = 97;

  /** Of the field's greatest strength: below, there is no part in the plane at all. */
  private static final double NOTHING = 1e-11;

  private final PlateField plate;
  private final LaneProvider provider;
  private final Frame window;
  private final Surface surface;
  private final DoubleConsumer progress;

  /**
   * A search.
   *
   * @param window in which to look; its number of places does not matter
   * @param progress told the fraction done; may throw to end the work
   */
  public WeakSpotSearch(
      PlateField plate,
      LaneProvider provider,
      Frame window,
      Surface surface,
      DoubleConsumer progress) {
    this.plate = plate;
    this.provider = provider;
    this.window = window;
    this.surface = surface;
    this.progress = progress;
  }

  /**
   * What was found.
   *
   * @param inPlane weak spots of the part in the plane
   * @param whole weak spots of the whole field
   * @param indexSum of the zeros in the plane
   * @param edgeTurns how often the field turns along the window's edge; nothing where it vanishes
   *     there, or where the surface has gaps
   * @param level whether there is no part in the plane at all, as half way up magnets of one height
   * @param side places along a side of the grid that was searched
   */
  public record Found(
      List<WeakSpot> inPlane,
      List<WeakSpot> whole,
      int indexSum,
      OptionalInt edgeTurns,
      boolean level,
      int side) {

    /** Copies the lists. */
    public Found {
      inPlane = List.copyOf(inPlane);
      whole = List.copyOf(whole);
    }

    /** Whether the count holds: as many turns along the edge as the zeros' indices sum up to. */
    public boolean agrees() {
      return edgeTurns.isPresent() && edgeTurns.getAsInt() == indexSum;
    }
  }

  /** Searches. */
  public Found run() {
    for (int side = FIRST_SIDE; ; side = 2 * side - 1) {
      Found found = search(side);
      if (found.agrees() || found.level() || found.edgeTurns().isEmpty() || side >= LAST_SIDE) {
        return found;
      }
    }
  }

  private Found search(int side) {
    Frame frame = window.with(side, side);
    FieldGrid grid =
        FieldGrid.of(plate.sources(), provider, frame, surface, f -> progress.accept(0.5 * f));
    SurfaceField field = plate.along(surface);
    double[] inPlane = grid.strengths(true);
    double[] whole = grid.strengths(false);
    double most = most(whole);
    double mostInPlane = most(inPlane);
    if (!(mostInPlane > NOTHING * most)) {
      List<WeakSpot> minima = most > 0 ? minima(frame, whole, false, field, List.of()) : List.of();
      return new Found(List.of(), minima, 0, OptionalInt.empty(), true, side);
    }
    List<InPlaneZeros.Zero> zeros = new InPlaneZeros(field, grid, mostInPlane).find();
    List<WeakSpot> spots = new ArrayList<>();
    double[] b = new double[3];
    for (InPlaneZeros.Zero zero : zeros) {
      field.at(zero.x(), zero.y(), b);
      double height = field.height(zero.x(), zero.y());
      spots.add(new WeakSpot(zero.kind(), zero.x(), zero.y(), height, 0, b[2], Optional.empty()));
    }
    int sum = spots.stream().mapToInt(spot -> spot.kind().index()).sum();
    for (WeakSpot minimum : minima(frame, inPlane, true, field, List.copyOf(spots))) {
      // Along a line of zeros every place of the grid may seem least.
      if (minimum.strength() > 1e-6 * mostInPlane) {
        spots.add(minimum);
      }
    }
    progress.accept(0.7);
    OptionalInt turns = new Turning(field, NOTHING * mostInPlane).alongEdge(frame);
    List<WeakSpot> wholeSpots = minima(frame, whole, false, field, List.of());
    progress.accept(0.8);
    return new Found(
        zoned(frame, inPlane, true, spots),
        zoned(frame, whole, false, wholeSpots),
        sum,
        turns,
        false,
        side);
  }

  private static double most(double[] strengths) {
    return Arrays.stream(strengths).filter(Double::isFinite).max().orElse(0);
  }

  /** Places of the grid weaker than all eight about them, refined; not those next to known ones. */
  private List<WeakSpot> minima(
      Frame frame, double[] strengths, boolean inPlane, SurfaceField field, List<WeakSpot> known) {
    List<WeakSpot> found = new ArrayList<>();
    double scale = most(strengths);
    var descent = new StrengthDescent(field, inPlane, frame);
    for (int row = 1; row < frame.rows() - 1; row++) {
      for (int column = 1; column < frame.columns() - 1; column++) {
        double x = frame.x(column);
        double y = frame.y(row);
        if (isLeast(frame, strengths, row * frame.columns() + column)
            && !anyNear(known, x, y, 2 * frame.stepX())) {
          descent
              .from(x, y, scale)
              .filter(spot -> !anyNear(known, spot.x(), spot.y(), 2 * frame.stepX()))
              .filter(spot -> !anyNear(found, spot.x(), spot.y(), frame.stepX()))
              .ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static boolean anyNear(List<WeakSpot> spots, double x, double y, double distance) {
    return spots.stream().anyMatch(s -> Math.hypot(s.x() - x, s.y() - y) < distance);
  }

  private static boolean isLeast(Frame frame, double[] strengths, int at) {
    for (int dr = -1; dr <= 1; dr++) {
      for (int dc = -1; dc <= 1; dc++) {
        int other = at + dr * frame.columns() + dc;
        if (other != at && !(strengths[at] < strengths[other])) {
          return false;
        }
      }
    }
    return true;
  }

  private List<WeakSpot> zoned(
      Frame frame, double[] strengths, boolean inPlane, List<WeakSpot> spots) {
    int[] places = spots.stream().mapToInt(s -> frame.nearest(s.x(), s.y())).toArray();
    var passes = new Passes(frame, strengths, places);
    List<WeakSpot> zoned = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      progress.accept(0.8 + 0.2 * i / spots.size());
      WeakSpot spot = spots.get(i);
      boolean told = passes.of(i) >= 0 && spot.kind() != SpotKind.LINE;
      zoned.add(
          told
              ? new WeakSpot(
                  spot.kind(),
                  spot.x(),
                  spot.y(),
                  spot.z(),
                  spot.strength(),
                  spot.vertical(),
                  zone(frame, strengths, inPlane, spot, passes.of(i), passes.outwards(i)))
              : spot);
    }
    return zoned;
  }

  private Optional<WeakSpot.Zone> zone(
      Frame frame, double[] strengths, boolean inPlane, WeakSpot spot, int pass, boolean outwards) {
    double level = (spot.strength() + strengths[pass]) / 2;
    int[] box = Flood.box(frame, strengths, frame.nearest(spot.x(), spot.y()), level);
    // The zone is looked at again, finer, with two cells to spare on each side.
    double left = frame.left() + frame.stepX() * (box[0] - 2);
    double bottom = frame.bottom() + frame.stepY() * (box[2] - 2);
    Frame near =
        new Frame(
            left,
            bottom,
            frame.stepX() * (box[1] - box[0] + 4),
            frame.stepY() * (box[3] - box[2] + 4),
            ZONE_SIDE,
            ZONE_SIDE);
    FieldGrid fine = FieldGrid.of(plate.sources(), provider, near, surface, f -> {});
    double[] values = fine.strengths(inPlane);
    int count = Flood.count(near, values, near.nearest(spot.x(), spot.y()), level);
    if (count == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new WeakSpot.Zone(
            level,
            count * near.stepX() * near.stepY(),
            strengths[pass],
            frame.x(pass % frame.columns()),
            frame.y(pass / frame.columns()),
            outwards));
  }
}
