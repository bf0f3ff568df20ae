package lodeswing.web.freeswing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.freeswing.FreePath;
import lodeswing.analysis.freeswing.Parting;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.motion.Limit;
import lodeswing.core.outcome.PathEnd;

/**
 * The paths of a free swing as they are stored, in SI.
 *
 * @param free the path without magnets
 * @param parting until when the path among the magnets keeps to it, where that was asked
 * @param second the path among the magnets, where it is to be drawn
 */
record StoredSwing(FreePath free, Optional<Parting.Result> parting, Optional<Second> second) {

  private static final String HELD = "HELD";

  /**
   * The path among the magnets.
   *
   * @param curve the path
   * @param trustedUntil until when it is right to the distance that traces state
   * @param end what ended it
   */
  record Second(PathCurve curve, OptionalDouble trustedUntil, Optional<PathEnd> end) {}

  byte[] written() {
    var bytes = new ByteArrayOutputStream(40 * free.curve().count() + 1_000);
    try (var out = new DataOutputStream(bytes)) {
      write(free.curve(), out);
      write(free.end(), out);
      out.writeDouble(free.halvedAt().orElse(Double.NaN));
      out.writeDouble(free.widest());
      out.writeBoolean(parting.isPresent());
      if (parting.isPresent()) {
        out.writeDouble(parting.get().at().orElse(Double.NaN));
        out.writeBoolean(parting.get().sure());
        write(parting.get().end(), out);
      }
      out.writeBoolean(second.isPresent());
      if (second.isPresent()) {
        write(second.get().curve(), out);
        out.writeDouble(second.get().trustedUntil().orElse(Double.NaN));
        write(second.get().end(), out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(PathCurve curve, DataOutputStream out) throws IOException {
    out.writeInt(curve.count());
    for (int i = 0; i < curve.count(); i++) {
      out.writeDouble(curve.t(i));
      out.writeDouble(curve.x(i));
      out.writeDouble(curve.y(i));
      out.writeDouble(curve.vx(i));
      out.writeDouble(curve.vy(i));
    }
  }

  private static void write(Optional<PathEnd> end, DataOutputStream out) throws IOException {
    out.writeDouble(end.map(PathEnd::time).orElse(Double.NaN));
    out.writeUTF(end.flatMap(PathEnd::limit).map(Limit.Kind::name).orElse(HELD));
  }

  static StoredSwing read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      PathCurve curve = curve(in);
      FreePath free = new FreePath(curve, end(in), time(in), in.readDouble());
      Optional<Parting.Result> parting =
          in.readBoolean()
              ? Optional.of(new Parting.Result(time(in), in.readBoolean(), end(in)))
              : Optional.empty();
      Optional<Second> second =
          in.readBoolean()
              ? Optional.of(new Second(curve(in), time(in), end(in)))
              : Optional.empty();
      return new StoredSwing(free, parting, second);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static PathCurve curve(DataInputStream in) throws IOException {
    int count = in.readInt();
    double[][] columns = new double[5][count];
    for (int i = 0; i < count; i++) {
      for (double[] column : columns) {
        column[i] = in.readDouble();
      }
    }
    return new PathCurve(columns[0], columns[1], columns[2], columns[3], columns[4]);
  }

  private static Optional<PathEnd> end(DataInputStream in) throws IOException {
    double time = in.readDouble();
    String kind = in.readUTF();
    if (Double.isNaN(time)) {
      return Optional.empty();
    }
    return Optional.of(
        new PathEnd(
            time, kind.equals(HELD) ? Optional.empty() : Optional.of(Limit.Kind.valueOf(kind))));
  }

  private static OptionalDouble time(DataInputStream in) throws IOException {
    double time = in.readDouble();
    return Double.isNaN(time) ? OptionalDouble.empty() : OptionalDouble.of(time);
  }
}
