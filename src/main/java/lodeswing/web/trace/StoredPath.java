package lodeswing.web.trace;

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
import java.util.OptionalInt;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.trace.Samples;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.core.geometry.PathCurve;
import lodeswing.web.restpoint.RestPlace;

/**
 * A path as it is stored: in SI, without labels, with the layout's rest points beside it, so that
 * nothing needs to be computed to answer it again.
 *
 * @param path the path
 * @param places all rest points of the layout
 * @param mapEnd the end that the map of the usual window names for the release, as a map numbers
 *     it; empty where the map does not show the release
 */
public record StoredPath(TraceResult path, List<RestPlace> places, OptionalInt mapEnd) {

  private static final int NONE = -1;

  /** Copies the list. */
  public StoredPath {
    places = List.copyOf(places);
  }

  /** In the form in which it is kept. */
  public byte[] written() {
    var bytes =
        new ByteArrayOutputStream(48 * (path.samples().count() + path.curve().count()) + 1_000);
    try (var out = new DataOutputStream(bytes)) {
      RestPlace.write(places, out);
      writeSamples(path.samples(), out);
      writeCurve(path.curve(), out);
      out.writeInt(path.events().size());
      for (TraceEvent event : path.events()) {
        out.writeDouble(event.time());
        out.writeUTF(event.kind().name());
      }
      out.writeInt(path.restPoint().orElse(NONE));
      out.writeBoolean(path.sure());
      for (OptionalDouble time :
          List.of(path.sealedAt(), path.settledAt(), path.trustedUntil(), path.foretoldUntil())) {
        out.writeDouble(time.orElse(Double.NaN));
      }
      out.writeDouble(path.followedUntil());
      out.writeLong(path.evaluations());
      out.writeInt(mapEnd.orElse(NONE));
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void writeSamples(Samples samples, DataOutputStream out) throws IOException {
    out.writeInt(samples.count());
    out.writeDouble(samples.interval());
    for (double[] column :
        List.of(samples.x(), samples.y(), samples.vx(), samples.vy(), samples.energy())) {
      for (double value : column) {
        out.writeDouble(value);
      }
    }
  }

  private static void writeCurve(PathCurve curve, DataOutputStream out) throws IOException {
    out.writeInt(curve.count());
    for (int i = 0; i < curve.count(); i++) {
      out.writeDouble(curve.t(i));
      out.writeDouble(curve.x(i));
      out.writeDouble(curve.y(i));
      out.writeDouble(curve.vx(i));
      out.writeDouble(curve.vy(i));
    }
  }

  /** Reads it back. */
  public static StoredPath read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      Samples samples = readSamples(in);
      PathCurve curve = readCurve(in);
      List<TraceEvent> events = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        double time = in.readDouble();
        events.add(new TraceEvent(time, TraceEvent.Kind.valueOf(in.readUTF())));
      }
      OptionalInt restPoint = index(in.readInt());
      boolean sure = in.readBoolean();
      TraceResult path =
          new TraceResult(
              samples,
              curve,
              events,
              restPoint,
              sure,
              time(in),
              time(in),
              time(in),
              time(in),
              in.readDouble(),
              in.readLong());
      return new StoredPath(path, places, index(in.readInt()));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  /** The end that the map names where it is another than the path's. */
  OptionalInt otherMapEnd() {
    return mapEnd.isPresent() && mapEnd.getAsInt() != end() ? mapEnd : OptionalInt.empty();
  }

  /** The path's end, as a map numbers it. */
  int end() {
    return path.restPoint().orElseGet(() -> places.size() + specialEnd().place());
  }

  /** Whether it is known how the path ends. */
  boolean decided() {
    return path.restPoint().isPresent() || specialEnd() != SpecialEnd.UNSETTLED;
  }

  private SpecialEnd specialEnd() {
    return path.events().stream()
        .map(event -> specialEnd(event.kind()))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(SpecialEnd.UNSETTLED);
  }

  private static Optional<SpecialEnd> specialEnd(TraceEvent.Kind kind) {
    return switch (kind) {
      case STUCK -> Optional.of(SpecialEnd.HELD);
      case SUSPENSION_SLACK -> Optional.of(SpecialEnd.SUSPENSION_SLACK);
      case MAGNET_CONTACT -> Optional.of(SpecialEnd.MAGNET_CONTACT);
      case PLATE_CONTACT -> Optional.of(SpecialEnd.PLATE_CONTACT);
      case ANGLE_LIMIT -> Optional.of(SpecialEnd.ANGLE_LIMIT);
      case SEALED, SETTLED, TRUST_ENDS, FORETELLING_ENDS -> Optional.empty();
    };
  }

  private static OptionalInt index(int stored) {
    return stored == NONE ? OptionalInt.empty() : OptionalInt.of(stored);
  }

  private static Samples readSamples(DataInputStream in) throws IOException {
    int count = in.readInt();
    double interval = in.readDouble();
    double[][] columns = new double[5][count];
    for (double[] column : columns) {
      for (int i = 0; i < count; i++) {
        column[i] = in.readDouble();
      }
    }
    return new Samples(interval, columns);
  }

  private static PathCurve readCurve(DataInputStream in) throws IOException {
    int count = in.readInt();
    double[][] columns = new double[5][count];
    for (int i = 0; i < count; i++) {
      for (double[] column : columns) {
        column[i] = in.readDouble();
      }
    }
    return new PathCurve(columns[0], columns[1], columns[2], columns[3], columns[4]);
  }

  private static OptionalDouble time(DataInputStream in) throws IOException {
    double time = in.readDouble();
    return Double.isNaN(time) ? OptionalDouble.empty() : OptionalDouble.of(time);
  }
}
