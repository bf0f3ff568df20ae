package lodeswing.web.occupancy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.occupancy.CellGrid;
import lodeswing.analysis.occupancy.OccupancyResult;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;

/** An occupancy as it is stored, in SI. */
final class StoredOccupancy {

  private final CellGrid grid;
  private final double[] strengths;
  private final double[] shares;
  private final double[] freeShares;
  private final double elsewhere;
  private final int notReleased;
  private final int endedEarly;
  private final Map<Figure, Estimate> figures;

  private StoredOccupancy(
      CellGrid grid,
      double[][] columns,
      double elsewhere,
      int notReleased,
      int endedEarly,
      Map<Figure, Estimate> figures) {
    this.grid = grid;
    this.strengths = columns[0];
    this.shares = columns[1];
    this.freeShares = columns[2];
    this.elsewhere = elsewhere;
    this.notReleased = notReleased;
    this.endedEarly = endedEarly;
    this.figures = figures;
  }

  /** What is told with an interval. */
  enum Figure {
    CORRELATION,
    FREE_CORRELATION,
    CHANGE,
    MEAN_FIELD,
    FREE_MEAN_FIELD,
    OVER_MAGNETS,
    FREE_OVER_MAGNETS
  }

  static StoredOccupancy of(OccupancyResult result) {
    Map<Figure, Estimate> figures = new EnumMap<>(Figure.class);
    result.correlation().ifPresent(found -> figures.put(Figure.CORRELATION, found));
    result.freeCorrelation().ifPresent(found -> figures.put(Figure.FREE_CORRELATION, found));
    result.change().ifPresent(found -> figures.put(Figure.CHANGE, found));
    figures.put(Figure.MEAN_FIELD, result.meanStrength());
    figures.put(Figure.FREE_MEAN_FIELD, result.freeMeanStrength());
    figures.put(Figure.OVER_MAGNETS, result.overMagnets());
    figures.put(Figure.FREE_OVER_MAGNETS, result.freeOverMagnets());
    return new StoredOccupancy(
        result.grid(),
        new double[][] {result.strengths(), result.shares(), result.freeShares()},
        result.elsewhere(),
        result.notReleased(),
        result.endedEarly(),
        figures);
  }

  /** The cells. */
  CellGrid grid() {
    return grid;
  }

  /** Strength of the field in a cell [T on the bench]; NaN where the bob cannot hang. */
  double strength(int cell) {
    return strengths[cell];
  }

  /** Share of the time in a cell. */
  double share(int cell) {
    return shares[cell];
  }

  /** The same without magnets. */
  double freeShare(int cell) {
    return freeShares[cell];
  }

  /** Share of the time beside the cells. */
  double elsewhere() {
    return elsewhere;
  }

  /** Releases that could not begin. */
  int notReleased() {
    return notReleased;
  }

  /** Releases that met a limit of the model. */
  int endedEarly() {
    return endedEarly;
  }

  /** A figure, where there is one. */
  Optional<Estimate> figure(Figure which) {
    return Optional.ofNullable(figures.get(which));
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeDouble(grid.halfWidth());
      out.writeInt(grid.side());
      for (double[] column : new double[][] {strengths, shares, freeShares}) {
        for (double value : column) {
          out.writeDouble(value);
        }
      }
      out.writeDouble(elsewhere);
      out.writeInt(notReleased);
      out.writeInt(endedEarly);
      for (Figure which : Figure.values()) {
        out.writeBoolean(figures.containsKey(which));
        if (figures.containsKey(which)) {
          Estimate figure = figures.get(which);
          out.writeDouble(figure.value());
          out.writeDouble(figure.standardError());
          out.writeDouble(figure.interval().low());
          out.writeDouble(figure.interval().high());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredOccupancy read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      CellGrid grid = new CellGrid(in.readDouble(), in.readInt());
      double[][] columns = {column(in, grid), column(in, grid), column(in, grid)};
      double elsewhere = in.readDouble();
      int notReleased = in.readInt();
      int endedEarly = in.readInt();
      Map<Figure, Estimate> figures = new EnumMap<>(Figure.class);
      for (Figure which : Figure.values()) {
        if (in.readBoolean()) {
          figures.put(
              which,
              new Estimate(
                  in.readDouble(),
                  in.readDouble(),
                  new Interval(in.readDouble(), in.readDouble())));
        }
      }
      return new StoredOccupancy(grid, columns, elsewhere, notReleased, endedEarly, figures);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static double[] column(DataInputStream in, CellGrid grid) throws IOException {
    double[] column = new double[grid.count()];
    for (int i = 0; i < column.length; i++) {
      column[i] = in.readDouble();
    }
    return column;
  }
}
