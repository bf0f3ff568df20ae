package lodeswing.core.field;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import lodeswing.core.integrate.lane.LaneProvider;

/**
 * The flux density at the places of a frame, over a surface: exact at each, none interpolated.
 *
 * <p>Tiles of eight by eight places are the blocks of the lanes; rows of tiles are shared out among
 * the threads of the common pool, and threads change no bit.
 */
public final class FieldGrid {

  private static final int TILE = 8;

  private final Frame frame;
  private final double[] field;

  private FieldGrid(Frame frame, double[] field) {
    this.frame = frame;
    this.field = field;
  }

  /**
   * Computes a grid.
   *
   * @param sources of the field
   * @param provider of lanes
   * @param frame the places
   * @param surface their heights
   * @param progress told the fraction done, by several threads; may throw to end the work
   */
  public static FieldGrid of(
      FieldSources sources,
      LaneProvider provider,
      Frame frame,
      Surface surface,
      DoubleConsumer progress) {
    double[] field = new double[3 * frame.count()];
    int tileRows = (frame.rows() + TILE - 1) / TILE;
    var done = new AtomicInteger();
    IntStream.range(0, tileRows)
        .parallel()
        .forEach(
            tileRow -> {
              var lanes = new LaneField(sources, provider);
              for (int column = 0; column < frame.columns(); column += TILE) {
                tile(lanes, frame, surface, tileRow * TILE, column, field);
              }
              progress.accept((double) done.incrementAndGet() / tileRows);
            });
    return new FieldGrid(frame, field);
  }

  private static void tile(
      LaneField lanes, Frame frame, Surface surface, int fromRow, int fromColumn, double[] field) {
    double[] slots = lanes.slots();
    double known = 0;
    for (int i = 0; i < FieldSlots.POINTS; i++) {
      double x = frame.x(column(frame, fromColumn, i));
      double y = frame.y(row(frame, fromRow, i));
      double z = surface.height(x, y);
      // A place that the surface lacks is computed somewhere and thrown away.
      known = Double.isNaN(z) ? known : z;
      slots[FieldSlots.X + i] = x;
      slots[FieldSlots.Y + i] = y;
      slots[FieldSlots.Z + i] = known;
    }
    lanes.compute();
    for (int i = 0; i < FieldSlots.POINTS; i++) {
      int row = row(frame, fromRow, i);
      int column = column(frame, fromColumn, i);
      boolean lacking = Double.isNaN(surface.height(frame.x(column), frame.y(row)));
      int at = 3 * (row * frame.columns() + column);
      field[at] = lacking ? Double.NaN : slots[FieldSlots.BX + i];
      field[at + 1] = lacking ? Double.NaN : slots[FieldSlots.BY + i];
      field[at + 2] = lacking ? Double.NaN : slots[FieldSlots.BZ + i];
    }
  }

  /** At the frame's edge lanes repeat the last row or column. */
  private static int row(Frame frame, int from, int i) {
    return Math.min(frame.rows() - 1, from + i / TILE);
  }

  private static int column(Frame frame, int from, int i) {
    return Math.min(frame.columns() - 1, from + i % TILE);
  }

  /** The places. */
  public Frame frame() {
    return frame;
  }

  /**
   * A component at a place [T]; NaN where the surface has none.
   *
   * @param index row by row from below
   * @param axis 0 to 2 for x, y, z
   */
  public double component(int index, int axis) {
    return field[3 * index + axis];
  }

  /** Size of the flux density at a place [T], of its part in the plane of the plate where asked. */
  public double strength(int index, boolean inPlane) {
    double x = field[3 * index];
    double y = field[3 * index + 1];
    double z = inPlane ? 0 : field[3 * index + 2];
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Sizes of the flux density at all places [T], NaN where the surface has none. */
  public double[] strengths(boolean inPlane) {
    double[] strengths = new double[frame.count()];
    Arrays.setAll(strengths, i -> strength(i, inPlane));
    return strengths;
  }
}
