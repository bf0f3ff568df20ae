package lodeswing.web.check;

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
import lodeswing.analysis.check.Cause;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.Finding.Measure;
import lodeswing.analysis.check.Verdict;

/** Findings as they are stored: in SI, without words. */
final class StoredCheck {

  private static final int NO_CHANGE = 0;
  private static final int FIGURE = 1;
  private static final int WORD = 2;

  private StoredCheck() {}

  static byte[] written(List<Finding> findings) {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeInt(findings.size());
      for (Finding finding : findings) {
        write(finding, out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(Finding finding, DataOutputStream out) throws IOException {
    Measure measure = finding.measure();
    out.writeUTF(finding.code().name());
    out.writeUTF(measure.verdict().name());
    write(measure.figure(), out);
    write(measure.limit(), out);
    out.writeUTF(measure.cause().name());
    out.writeInt(measure.details().size());
    for (double detail : measure.details()) {
      out.writeDouble(detail);
    }
    out.writeInt(measure.needs().size());
    for (String need : measure.needs()) {
      out.writeUTF(need);
    }
    if (finding.change().isEmpty()) {
      out.writeByte(NO_CHANGE);
    } else if (finding.change().get() instanceof Change.OfFigure figure) {
      out.writeByte(FIGURE);
      out.writeUTF(figure.pointer());
      write(figure.from(), out);
      out.writeDouble(figure.to());
    } else if (finding.change().get() instanceof Change.OfWord word) {
      out.writeByte(WORD);
      out.writeUTF(word.pointer());
      out.writeUTF(word.from().orElse(""));
      out.writeUTF(word.to());
    }
  }

  private static void write(OptionalDouble figure, DataOutputStream out) throws IOException {
    out.writeDouble(figure.orElse(Double.NaN));
  }

  static List<Finding> read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<Finding> findings = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        findings.add(finding(in));
      }
      return findings;
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static Finding finding(DataInputStream in) throws IOException {
    CheckCode code = CheckCode.valueOf(in.readUTF());
    Verdict verdict = Verdict.valueOf(in.readUTF());
    OptionalDouble figure = figure(in);
    OptionalDouble limit = figure(in);
    Cause cause = Cause.valueOf(in.readUTF());
    List<Double> details = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      details.add(in.readDouble());
    }
    List<String> needs = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      needs.add(in.readUTF());
    }
    return new Finding(
        code, new Measure(verdict, figure, limit, cause, details, needs), change(in));
  }

  private static OptionalDouble figure(DataInputStream in) throws IOException {
    double figure = in.readDouble();
    return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
  }

  private static Optional<Change> change(DataInputStream in) throws IOException {
    return switch (in.readByte()) {
      case FIGURE -> Optional.of(new Change.OfFigure(in.readUTF(), figure(in), in.readDouble()));
      case WORD -> {
        String pointer = in.readUTF();
        Optional<String> from = Optional.of(in.readUTF()).filter(word -> !word.isEmpty());
        yield Optional.of(new Change.OfWord(pointer, from, in.readUTF()));
      }
      default -> Optional.empty();
    };
  }
}
