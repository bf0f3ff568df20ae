package lodeswing.core.motion;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Leads from a place to its table cell in two looks: each coarse cell has its own net, as fine as
 * the finest cut within it. An entry names the cell and how much coarser than the finest net it is,
 * so that the place within the cell follows without a third look.
 *
 * <p>Immutable.
 */
public final class CellDirectory {

  /** Entry of a place without a cell. */
  public static final int NO_CELL = -1;

  /** Lowest bits of an entry: how much coarser than the finest net its cell is. */
  public static final int LEVEL_BITS = 3;

  /** Those bits. */
  public static final int LEVEL = (1 << LEVEL_BITS) - 1;

  /** Coarse cells in a row, with one beyond the square that is empty. */
  public static final int ROW = CellTable.COARSE + 1;

  /** Cells in a place of the finest net: 2^-coarser. */
  private static final double[] PER_PLACE =
      IntStream.rangeClosed(0, LEVEL).mapToDouble(k -> Math.scalb(1.0, -k)).toArray();

  private final double halfWidth;
  private final double perAngle;
  private final int depth;
  private final int across;
  private final int[] nets;
  private final int[] entries;

  /**
   * A square of a table.
   *
   * @param level how often the coarse net was cut
   * @param i row in the net of that level
   * @param j column in it
   * @param cell the table's number for it, or {@link #NO_CELL}
   */
  record Square(int level, int i, int j, int cell) {
    /** The coarse cell that holds it. */
    int coarse() {
      return (i >> level) * ROW + (j >> level);
    }
  }

  /**
   * The directory of squares that cover [-halfWidth, halfWidth]^2.
   *
   * @param halfWidth half the side [rad]
   * @param squares all of them
   */
  CellDirectory(double halfWidth, List<Square> squares) {
    this.halfWidth = halfWidth;
    int[] finest = new int[ROW * ROW];
    for (Square square : squares) {
      finest[square.coarse()] = Math.max(finest[square.coarse()], square.level);
    }
    this.depth = Arrays.stream(finest).max().orElse(0);
    this.across = CellTable.COARSE << depth;
    this.perAngle = across / (2 * halfWidth);
    this.nets = new int[ROW * ROW];
    int places = 0;
    for (int k = 0; k < nets.length; k++) {
      nets[k] = places << LEVEL_BITS | (depth - finest[k]);
      places += 1 << (2 * finest[k]);
    }
    this.entries = new int[places];
    Arrays.fill(entries, NO_CELL);
    for (Square square : squares) {
      if (square.cell != NO_CELL) {
        enter(square);
      }
    }
  }

  private void enter(Square square) {
    int net = nets[square.coarse()];
    int fineness = depth - (net & LEVEL);
    int span = 1 << (fineness - square.level);
    int mask = (1 << square.level) - 1;
    int column = (square.j & mask) * span;
    int entry = square.cell << LEVEL_BITS | (depth - square.level);
    for (int i = (square.i & mask) * span, k = 0; k < span; k++, i++) {
      int row = (net >> LEVEL_BITS) + (i << fineness) + column;
      Arrays.fill(entries, row, row + span, entry);
    }
  }

  /** Half the square's side [rad]. */
  public double halfWidth() {
    return halfWidth;
  }

  /** Places of the finest net in a radian. */
  public double perAngle() {
    return perAngle;
  }

  /** Places of the finest net across the square. */
  public int across() {
    return across;
  }

  /** How often a coarse cell is cut to make the finest net. */
  public int depth() {
    return depth;
  }

  /**
   * Coarse cells row by row: where their entries begin, and in the lowest bits how much coarser
   * than the finest net they are; the directory's own array, not to be changed.
   */
  public int[] nets() {
    return nets;
  }

  /** All entries; the directory's own array, not to be changed. */
  public int[] entries() {
    return entries;
  }

  /** Where an angle lies on the finest net, from 0; beyond the square a place without a cell. */
  double place(double angle) {
    double place = (angle + halfWidth) * perAngle;
    return place >= 0 && place < across ? place : across;
  }

  /**
   * The entry of a place on the finest net, or {@link #NO_CELL}.
   *
   * @param x place in u, of {@link #place}
   * @param y place in v
   */
  int entry(double x, double y) {
    return entry((int) x, (int) y);
  }

  private int entry(int i, int j) {
    int net = nets[(i >> depth) * ROW + (j >> depth)];
    int low = (1 << depth) - 1;
    int coarser = net & LEVEL;
    int row = (i & low) >> coarser << (depth - coarser);
    return entries[(net >> LEVEL_BITS) + row + ((j & low) >> coarser)];
  }

  /** The cell of an entry, below 0 where there is none. */
  static int cell(int entry) {
    return entry >> LEVEL_BITS;
  }

  /** Cells of an entry's size in a place of the finest net, a power of two. */
  static double perPlace(int entry) {
    return PER_PLACE[entry & LEVEL];
  }

  /** Units of an entry's own coordinate in a radian. */
  double perAngle(int entry) {
    return PER_PLACE[entry & LEVEL] * (2 * perAngle);
  }

  /**
   * A place as a cell's own coordinate, -1 to 1, exactly.
   *
   * @param place on the finest net
   * @param perPlace cells in a place of the net
   */
  static double within(double place, double perPlace) {
    double cells = place * perPlace;
    return Math.fma(cells - (int) cells, 2.0, -1.0);
  }

  /** Share of the places of a square about the middle that have no cell. */
  double uncovered(double half) {
    int to = Math.min(across, (int) Math.ceil((half + halfWidth) * perAngle));
    int from = across - to;
    long none = 0;
    for (int i = from; i < to; i++) {
      for (int j = from; j < to; j++) {
        none += entry(i, j) == NO_CELL ? 1 : 0;
      }
    }
    return none / ((double) (to - from) * (to - from));
  }

  /** About how much memory it holds. */
  long bytes() {
    return (long) Integer.BYTES * (nets.length + entries.length);
  }
}
