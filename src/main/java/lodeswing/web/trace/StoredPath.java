package lodeswing.web.trace;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
 */
record StoredPath(TraceResult path, List<RestPlace> places) {

  StoredPath {
    places = List.copyOf(places);
  }

  byte[] written() {
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
      out.writeInt(path.restPoint().orElse(-1));
      out.writeBoolean(path.sure());
      for (OptionalDouble time :
          List.of(path.sealedAt(), path.settledAt(), path.trustedUntil(), path.foretoldUntil())) {
        out.writeDouble(time.orElse(Double.NaN));
      }
      out.writeDouble(path.followedUntil());
      out.writeLong(path.evaluations());
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

  static StoredPath read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      Samples samples = readSamples(in);
      PathCurve curve = readCurve(in);
      List<TraceEvent> events = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        double time = in.readDouble();
        events.add(new TraceEvent(time, TraceEvent.Kind.valueOf(in.readUTF())));
      }
      int restPoint = in.readInt();
      boolean sure = in.readBoolean();
      TraceResult path =
          new TraceResult(
              samples,
              curve,
              events,
              restPoint < 0 ? OptionalInt.empty() : OptionalInt.of(restPoint),
              sure,
              time(in),
              time(in),
              time(in),
              time(in),
              in.readDouble(),
              in.readLong());
      return new StoredPath(path, places);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
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
