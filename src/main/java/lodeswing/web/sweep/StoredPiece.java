package lodeswing.web.sweep;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import lodeswing.analysis.sweep.Contact;
import lodeswing.analysis.sweep.LayoutFigures;
import lodeswing.analysis.sweep.MapFigures;
import lodeswing.analysis.sweep.ReleaseFigures;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.web.restpoint.RestPlace;

/**
 * A piece of a sweep as it is stored, without labels: figures of one layout and of its releases.
 *
 * @param places all rest points of the layout
 * @param layout its own figures
 * @param releases the figures of each release of the piece; none where no release is asked for
 * @param hands where the tries of a hand about each release end; none where no odds are asked for
 */
record StoredPiece(
    List<RestPlace> places,
    LayoutFigures layout,
    List<ReleaseFigures> releases,
    List<EndCounts> hands) {

  StoredPiece {
    places = List.copyOf(places);
    releases = List.copyOf(releases);
    hands = List.copyOf(hands);
  }

  byte[] written() {
    return bytes(
        out -> {
          RestPlace.write(places, out);
          out.writeDouble(layout.shortPeriod());
          out.writeDouble(layout.longPeriod());
          out.writeUTF(layout.contact().name());
          write(layout.clearance(), out);
          out.writeInt(releases.size());
          for (ReleaseFigures release : releases) {
            out.writeInt(release.end());
            out.writeDouble(release.sealedAt());
            out.writeDouble(release.settledAt());
            out.writeBoolean(release.sure());
            write(release.periodX(), out);
            write(release.periodY(), out);
          }
          out.writeInt(hands.size());
          for (EndCounts hand : hands) {
            write(hand.byEnd(), out);
          }
        });
  }

  static StoredPiece read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      var layout =
          new LayoutFigures(
              in.readDouble(), in.readDouble(), Contact.valueOf(in.readUTF()), optional(in));
      List<ReleaseFigures> releases = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        releases.add(
            new ReleaseFigures(
                in.readInt(),
                in.readDouble(),
                in.readDouble(),
                in.readBoolean(),
                optional(in),
                optional(in)));
      }
      List<EndCounts> hands = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        hands.add(new EndCounts(counts(in)));
      }
      return new StoredPiece(places, layout, releases, hands);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  /** The figures of a small map as they are stored. */
  static byte[] written(MapFigures map) {
    return bytes(
        out -> {
          write(map.counts(), out);
          write(map.boxDimension(), out);
          write(map.uncertaintyExponent(), out);
          write(map.basinEntropy(), out);
          write(map.boundaryBasinEntropy(), out);
        });
  }

  static MapFigures readMap(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      SortedMap<Integer, Integer> counts = counts(in);
      return new MapFigures(counts, estimate(in), estimate(in), estimate(in), estimate(in));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static void write(SortedMap<Integer, Integer> counts, DataOutputStream out)
      throws IOException {
    out.writeInt(counts.size());
    for (var entry : counts.entrySet()) {
      out.writeInt(entry.getKey());
      out.writeInt(entry.getValue());
    }
  }

  private static SortedMap<Integer, Integer> counts(DataInputStream in) throws IOException {
    SortedMap<Integer, Integer> counts = new TreeMap<>();
    for (int k = in.readInt(); k > 0; k--) {
      counts.put(in.readInt(), in.readInt());
    }
    return counts;
  }

  /** Writes something. */
  private interface Writing {
    void to(DataOutputStream out) throws IOException;
  }

  private static byte[] bytes(Writing writing) {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      writing.to(out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(OptionalDouble figure, DataOutputStream out) throws IOException {
    out.writeDouble(figure.orElse(Double.NaN));
  }

  private static OptionalDouble optional(DataInputStream in) throws IOException {
    double figure = in.readDouble();
    return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
  }

  private static void write(Optional<Estimate> estimate, DataOutputStream out) throws IOException {
    out.writeBoolean(estimate.isPresent());
    if (estimate.isPresent()) {
      out.writeDouble(estimate.get().value());
      out.writeDouble(estimate.get().standardError());
      out.writeDouble(estimate.get().interval().low());
      out.writeDouble(estimate.get().interval().high());
    }
  }

  private static Optional<Estimate> estimate(DataInputStream in) throws IOException {
    return in.readBoolean()
        ? Optional.of(
            new Estimate(
                in.readDouble(), in.readDouble(), new Interval(in.readDouble(), in.readDouble())))
        : Optional.empty();
  }
}
