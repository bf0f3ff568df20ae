package lodeswing.web.field;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lodeswing.analysis.field.FieldLine;
import lodeswing.analysis.field.Filings;
import lodeswing.analysis.field.SpaceNull;
import lodeswing.analysis.field.SpaceNulls;
import lodeswing.analysis.field.SpotKind;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.core.field.FieldGrid;

/**
 * A picture of the field as it is stored, in SI.
 *
 * <p>Four columns of numbers hold what it is made of: the strengths of a map; places, strengths and
 * counts of lines; places and thicknesses of filings; places of nulls.
 */
final class StoredField {

  private final Optional<WeakSpotSearch.Found> spots;
  private final double[] first;
  private final double[] second;
  private final double[] third;
  private final int[] counts;
  private final double figure;

  private StoredField(
      Optional<WeakSpotSearch.Found> spots, double[][] columns, int[] counts, double figure) {
    this.spots = spots;
    this.first = columns[0];
    this.second = columns[1];
    this.third = columns[2];
    this.counts = counts;
    this.figure = figure;
  }

  static StoredField map(Optional<WeakSpotSearch.Found> spots, FieldGrid grid, boolean inPlane) {
    return new StoredField(
        spots,
        new double[][] {grid.strengths(inPlane), new double[0], new double[0]},
        new int[0],
        0);
  }

  static StoredField lines(
      Optional<WeakSpotSearch.Found> spots, List<FieldLine> lines, double outOfCut) {
    int all = lines.stream().mapToInt(FieldLine::count).sum();
    double[][] columns = new double[3][all];
    int[] counts = new int[lines.size()];
    int at = 0;
    for (int n = 0; n < counts.length; n++) {
      FieldLine line = lines.get(n);
      // A line that closes is told by a count below 0.
      counts[n] = line.closed() ? -line.count() : line.count();
      for (int i = 0; i < line.count(); i++) {
        columns[0][at] = line.u(i);
        columns[1][at] = line.v(i);
        columns[2][at] = line.strength(i);
        at++;
      }
    }
    return new StoredField(spots, columns, counts, outOfCut);
  }

  static StoredField filings(Optional<WeakSpotSearch.Found> spots, Filings.Strewn strewn) {
    double[] places = new double[6 * strewn.count()];
    int[] widths = new int[strewn.count()];
    for (int n = 0; n < widths.length; n++) {
      widths[n] = strewn.width(n);
      for (int place = 0; place < 3; place++) {
        places[6 * n + 2 * place] = strewn.x(n, place);
        places[6 * n + 2 * place + 1] = strewn.y(n, place);
      }
    }
    return new StoredField(
        spots, new double[][] {places, new double[0], new double[0]}, widths, strewn.weak());
  }

  static StoredField spots(
      WeakSpotSearch.Found spots, SpaceNulls.Found nulls, double low, double high) {
    double[] places = new double[7 * nulls.nulls().size()];
    int at = 0;
    for (SpaceNull one : nulls.nulls()) {
      for (double value :
          new double[] {
            one.x(), one.y(), one.z(), one.index(), one.spineX(), one.spineY(), one.spineZ()
          }) {
        places[at++] = value;
      }
    }
    return new StoredField(
        Optional.of(spots),
        new double[][] {places, {low, high}, new double[0]},
        new int[] {nulls.covers()},
        0);
  }

  /** Weak spots along the surface, where they were looked for. */
  Optional<WeakSpotSearch.Found> spots() {
    return spots;
  }

  /** Strengths of a map [T], row by row from below; not copied. */
  double[] strengths() {
    return first;
  }

  /** The lines. */
  List<FieldLine> lines() {
    List<FieldLine> lines = new ArrayList<>();
    int at = 0;
    for (int told : counts) {
      int count = Math.abs(told);
      lines.add(
          FieldLine.of(
              java.util.Arrays.copyOfRange(first, at, at + count),
              java.util.Arrays.copyOfRange(second, at, at + count),
              java.util.Arrays.copyOfRange(third, at, at + count),
              told < 0));
      at += count;
    }
    return lines;
  }

  /** Greatest share of the field that leads out of an upright cut. */
  double outOfCut() {
    return figure;
  }

  /** The filings. */
  Filings.Strewn filings() {
    return Filings.Strewn.of(first, counts, figure);
  }

  /** The places in space without any field. */
  SpaceNulls.Found nulls() {
    List<SpaceNull> nulls = new ArrayList<>();
    for (int at = 0; at < first.length; at += 7) {
      nulls.add(
          new SpaceNull(
              first[at],
              first[at + 1],
              first[at + 2],
              (int) first[at + 3],
              first[at + 4],
              first[at + 5],
              first[at + 6]));
    }
    return new SpaceNulls.Found(nulls, nulls.stream().mapToInt(SpaceNull::index).sum(), counts[0]);
  }

  /** Heights between which those were looked for [m]. */
  double[] nullHeights() {
    return second.clone();
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeBoolean(spots.isPresent());
      if (spots.isPresent()) {
        write(out, spots.get());
      }
      for (double[] column : List.of(first, second, third)) {
        out.writeInt(column.length);
        for (double value : column) {
          out.writeDouble(value);
        }
      }
      out.writeInt(counts.length);
      for (int count : counts) {
        out.writeInt(count);
      }
      out.writeDouble(figure);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, WeakSpotSearch.Found found) throws IOException {
    for (List<WeakSpot> list : List.of(found.inPlane(), found.whole())) {
      out.writeInt(list.size());
      for (WeakSpot spot : list) {
        out.writeUTF(spot.kind().name());
        for (double value :
            new double[] {spot.x(), spot.y(), spot.z(), spot.strength(), spot.vertical()}) {
          out.writeDouble(value);
        }
        out.writeBoolean(spot.zone().isPresent());
        if (spot.zone().isPresent()) {
          WeakSpot.Zone zone = spot.zone().get();
          for (double value :
              new double[] {zone.level(), zone.area(), zone.pass(), zone.passX(), zone.passY()}) {
            out.writeDouble(value);
          }
          out.writeBoolean(zone.outwards());
        }
      }
    }
    out.writeInt(found.indexSum());
    out.writeBoolean(found.edgeTurns().isPresent());
    out.writeInt(found.edgeTurns().orElse(0));
    out.writeBoolean(found.level());
    out.writeInt(found.side());
  }

  static StoredField read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      Optional<WeakSpotSearch.Found> spots =
          in.readBoolean() ? Optional.of(found(in)) : Optional.empty();
      double[][] columns = {column(in), column(in), column(in)};
      int[] counts = new int[in.readInt()];
      for (int i = 0; i < counts.length; i++) {
        counts[i] = in.readInt();
      }
      return new StoredField(spots, columns, counts, in.readDouble());
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static WeakSpotSearch.Found found(DataInputStream in) throws IOException {
    List<WeakSpot> inPlane = spots(in);
    List<WeakSpot> whole = spots(in);
    int sum = in.readInt();
    boolean told = in.readBoolean();
    int turns = in.readInt();
    return new WeakSpotSearch.Found(
        inPlane,
        whole,
        sum,
        told ? OptionalInt.of(turns) : OptionalInt.empty(),
        in.readBoolean(),
        in.readInt());
  }

  private static List<WeakSpot> spots(DataInputStream in) throws IOException {
    List<WeakSpot> spots = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      SpotKind kind = SpotKind.valueOf(in.readUTF());
      double x = in.readDouble();
      double y = in.readDouble();
      double z = in.readDouble();
      double strength = in.readDouble();
      double vertical = in.readDouble();
      Optional<WeakSpot.Zone> zone =
          in.readBoolean()
              ? Optional.of(
                  new WeakSpot.Zone(
                      in.readDouble(),
                      in.readDouble(),
                      in.readDouble(),
                      in.readDouble(),
                      in.readDouble(),
                      in.readBoolean()))
              : Optional.empty();
      spots.add(new WeakSpot(kind, x, y, z, strength, vertical, zone));
    }
    return spots;
  }

  private static double[] column(DataInputStream in) throws IOException {
    double[] column = new double[in.readInt()];
    for (int i = 0; i < column.length; i++) {
      column[i] = in.readDouble();
    }
    return column;
  }
}
