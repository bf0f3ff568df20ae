package lodeswing.web.twins;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.twins.Cut;
import lodeswing.analysis.twins.Separation;
import lodeswing.analysis.twins.TwinsResult;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.web.trace.StoredPath;

/**
 * Twins as they are stored: both paths as a trace stores its own, and what they are to each other.
 *
 * @param first the first path
 * @param second the second path
 * @param pair what they are to each other
 */
record StoredTwins(StoredPath first, StoredPath second, TwinsResult pair) {

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      for (StoredPath path : List.of(first, second)) {
        byte[] written = path.written();
        out.writeInt(written.length);
        out.write(written);
      }
      out.writeDouble(pair.shownUntil());
      out.writeUTF(pair.shownEnd().name());
      out.writeDouble(pair.rate());
      out.writeDouble(pair.partedDistance());
      out.writeDouble(pair.partedAt().orElse(Double.NaN));
      out.writeBoolean(pair.growth().isPresent());
      if (pair.growth().isPresent()) {
        write(pair.growth().get(), out);
      }
      Separation curve = pair.separation();
      out.writeInt(curve.count());
      for (double[] column : List.of(curve.t(), curve.distance(), curve.phase())) {
        for (double value : column) {
          out.writeDouble(value);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(TwinsResult.Growth growth, DataOutputStream out) throws IOException {
    out.writeDouble(growth.until());
    out.writeUTF(growth.end().name());
    out.writeDouble(growth.rate().value());
    out.writeDouble(growth.rate().standardError());
    out.writeDouble(growth.rate().interval().low());
    out.writeDouble(growth.rate().interval().high());
    out.writeDouble(growth.atStart());
    out.writeDouble(growth.first());
    out.writeDouble(growth.second());
  }

  static StoredTwins read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      StoredPath first = path(in);
      StoredPath second = path(in);
      double shownUntil = in.readDouble();
      Cut shownEnd = Cut.valueOf(in.readUTF());
      double rate = in.readDouble();
      double partedDistance = in.readDouble();
      double partedAt = in.readDouble();
      Optional<TwinsResult.Growth> growth =
          in.readBoolean() ? Optional.of(growth(in)) : Optional.empty();
      double[][] columns = new double[3][in.readInt()];
      for (double[] column : columns) {
        for (int i = 0; i < column.length; i++) {
          column[i] = in.readDouble();
        }
      }
      return new StoredTwins(
          first,
          second,
          new TwinsResult(
              shownUntil,
              shownEnd,
              rate,
              partedDistance,
              Double.isNaN(partedAt) ? OptionalDouble.empty() : OptionalDouble.of(partedAt),
              growth,
              new Separation(columns[0], columns[1], columns[2])));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static StoredPath path(DataInputStream in) throws IOException {
    return StoredPath.read(in.readNBytes(in.readInt()));
  }

  private static TwinsResult.Growth growth(DataInputStream in) throws IOException {
    double until = in.readDouble();
    Cut end = Cut.valueOf(in.readUTF());
    double value = in.readDouble();
    double error = in.readDouble();
    Estimate rate = new Estimate(value, error, new Interval(in.readDouble(), in.readDouble()));
    return new TwinsResult.Growth(
        until, end, rate, in.readDouble(), in.readDouble(), in.readDouble());
  }
}
