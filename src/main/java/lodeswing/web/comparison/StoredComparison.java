package lodeswing.web.comparison;

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
import lodeswing.analysis.comparison.ComparisonResult;
import lodeswing.analysis.comparison.Hint;
import lodeswing.analysis.comparison.RecordedEnd;
import lodeswing.analysis.comparison.Start;
import lodeswing.analysis.comparison.Track;
import lodeswing.analysis.comparison.Verdict;
import lodeswing.core.rig.Release;
import lodeswing.web.trace.StoredPath;

/**
 * A comparison as it is stored: the start, the foretold path as a trace stores its own, and what
 * the two are to each other.
 *
 * @param start from where the path was foretold
 * @param path the foretold path
 * @param found what was found
 */
record StoredComparison(StoredStart start, StoredPath path, ComparisonResult found) {

  private static final int NONE = -1;

  /**
   * A start as it is stored, in SI.
   *
   * @param release place and velocity
   * @param time after the first recorded place [s]
   * @param errors standard deviations of x, y, vx, vy and the time
   * @param mirrored whether the recording's y axis was taken as reversed
   * @param places recorded places that it was held against
   * @param scatter of a coordinate about the path over them [m]
   */
  record StoredStart(
      Release release,
      double time,
      List<Double> errors,
      boolean mirrored,
      int places,
      double scatter) {

    StoredStart {
      errors = List.copyOf(errors);
    }

    static StoredStart of(Start start) {
      List<Double> errors = new ArrayList<>();
      for (int k = 0; k < 4; k++) {
        errors.add(start.error(k));
      }
      errors.add(start.timeError());
      return new StoredStart(
          start.release(),
          start.time(),
          errors,
          start.frame().mirrored(),
          start.stretch().count(),
          start.scatter());
    }
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      write(start, out);
      byte[] written = path.written();
      out.writeInt(written.length);
      out.write(written);
      out.writeUTF(found.verdict().name());
      write(found.track(), out);
      out.writeDouble(found.noise());
      out.writeDouble(found.partedDistance());
      for (OptionalDouble time :
          List.of(
              found.partedAt(), found.departedAt(), found.trustedUntil(), found.foretoldUntil())) {
        out.writeDouble(time.orElse(Double.NaN));
      }
      out.writeDouble(found.near().startRms());
      out.writeDouble(found.near().rms());
      out.writeDouble(found.near().greatest());
      out.writeDouble(found.near().until());
      out.writeBoolean(found.end().isPresent());
      if (found.end().isPresent()) {
        write(found.end().get(), out);
      }
      out.writeInt(found.hints().size());
      for (Hint hint : found.hints()) {
        write(hint, out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(StoredStart start, DataOutputStream out) throws IOException {
    out.writeDouble(start.release().x());
    out.writeDouble(start.release().y());
    out.writeDouble(start.release().vx());
    out.writeDouble(start.release().vy());
    out.writeDouble(start.time());
    for (double error : start.errors()) {
      out.writeDouble(error);
    }
    out.writeBoolean(start.mirrored());
    out.writeInt(start.places());
    out.writeDouble(start.scatter());
  }

  private static void write(Track track, DataOutputStream out) throws IOException {
    out.writeInt(track.first());
    out.writeInt(track.count());
    for (double[] column : List.of(track.x(), track.y(), track.distance(), track.deviation())) {
      for (double value : column) {
        out.writeDouble(value);
      }
    }
  }

  private static void write(RecordedEnd end, DataOutputStream out) throws IOException {
    out.writeDouble(end.x());
    out.writeDouble(end.y());
    out.writeInt(end.nearest().orElse(NONE));
    out.writeDouble(end.distance());
    out.writeBoolean(end.belongs());
  }

  private static void write(Hint hint, DataOutputStream out) throws IOException {
    out.writeUTF(hint.kind().name());
    out.writeInt(hint.changes().size());
    for (Hint.Change change : hint.changes()) {
      out.writeDouble(change.value());
      out.writeDouble(change.halfWidth());
    }
    out.writeBoolean(hint.reversed());
    out.writeDouble(hint.until());
  }

  static StoredComparison read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      StoredStart start = start(in);
      StoredPath path = StoredPath.read(in.readNBytes(in.readInt()));
      Verdict verdict = Verdict.valueOf(in.readUTF());
      Track track = track(in);
      return new StoredComparison(
          start,
          path,
          new ComparisonResult(
              verdict,
              track,
              in.readDouble(),
              in.readDouble(),
              time(in),
              time(in),
              time(in),
              time(in),
              new ComparisonResult.Nearness(
                  in.readDouble(), in.readDouble(), in.readDouble(), in.readDouble()),
              in.readBoolean() ? Optional.of(end(in)) : Optional.empty(),
              hints(in)));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static StoredStart start(DataInputStream in) throws IOException {
    Release release =
        new Release(in.readDouble(), in.readDouble(), in.readDouble(), in.readDouble());
    double time = in.readDouble();
    List<Double> errors = new ArrayList<>();
    for (int k = 0; k < 5; k++) {
      errors.add(in.readDouble());
    }
    return new StoredStart(release, time, errors, in.readBoolean(), in.readInt(), in.readDouble());
  }

  private static Track track(DataInputStream in) throws IOException {
    int first = in.readInt();
    double[][] columns = new double[4][in.readInt()];
    for (double[] column : columns) {
      for (int i = 0; i < column.length; i++) {
        column[i] = in.readDouble();
      }
    }
    return new Track(first, columns[0], columns[1], columns[2], columns[3]);
  }

  private static OptionalDouble time(DataInputStream in) throws IOException {
    double time = in.readDouble();
    return Double.isNaN(time) ? OptionalDouble.empty() : OptionalDouble.of(time);
  }

  private static RecordedEnd end(DataInputStream in) throws IOException {
    double x = in.readDouble();
    double y = in.readDouble();
    int nearest = in.readInt();
    return new RecordedEnd(
        x,
        y,
        nearest == NONE ? OptionalInt.empty() : OptionalInt.of(nearest),
        in.readDouble(),
        in.readBoolean());
  }

  private static List<Hint> hints(DataInputStream in) throws IOException {
    List<Hint> hints = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      Hint.Kind kind = Hint.Kind.valueOf(in.readUTF());
      List<Hint.Change> changes = new ArrayList<>();
      for (int c = in.readInt(); c > 0; c--) {
        changes.add(new Hint.Change(in.readDouble(), in.readDouble()));
      }
      hints.add(new Hint(kind, changes, in.readBoolean(), in.readDouble()));
    }
    return hints;
  }
}
