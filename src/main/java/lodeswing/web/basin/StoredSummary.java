package lodeswing.web.basin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.analysis.basin.OutcomeShare;
import lodeswing.analysis.basin.SummaryFigure;
import lodeswing.analysis.basin.WadaFinding;
import lodeswing.core.statistics.WadaTest;

/**
 * A map's summary as it is stored: without labels, with the survey of its window.
 *
 * @param survey of the window, with the layout's rest points
 * @param summary the figures
 * @param drawn the releases below the pixels that gave the exponent; empty where the map gave it or
 *     nothing did
 */
record StoredSummary(StoredSurvey survey, BasinSummary summary, Optional<Drawn> drawn) {

  /**
   * Releases drawn below a map's pixels.
   *
   * @param releases how many were followed
   * @param smallest smallest distance that was used
   * @param largest largest distance that was used
   */
  record Drawn(int releases, double smallest, double largest) {}

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      byte[] surveyed = survey.written();
      out.writeInt(surveyed.length);
      out.write(surveyed);
      out.writeInt(summary.shares().size());
      for (OutcomeShare share : summary.shares()) {
        out.writeInt(share.end());
        out.writeInt(share.releases());
        out.writeDouble(share.share());
        out.writeDouble(share.low());
        out.writeDouble(share.high());
      }
      write(summary.boxDimension(), out);
      write(summary.uncertaintyExponent(), out);
      write(summary.basinEntropy(), out);
      write(summary.boundaryBasinEntropy(), out);
      write(summary.wada(), out);
      out.writeUTF(summary.sentence());
      out.writeBoolean(drawn.isPresent());
      if (drawn.isPresent()) {
        out.writeInt(drawn.get().releases());
        out.writeDouble(drawn.get().smallest());
        out.writeDouble(drawn.get().largest());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(Optional<SummaryFigure> figure, DataOutputStream out)
      throws IOException {
    out.writeBoolean(figure.isPresent());
    if (figure.isPresent()) {
      out.writeDouble(figure.get().value());
      out.writeDouble(figure.get().low());
      out.writeDouble(figure.get().high());
      out.writeUTF(figure.get().source());
      out.writeUTF(figure.get().sentence());
    }
  }

  private static void write(WadaFinding wada, DataOutputStream out) throws IOException {
    out.writeUTF(wada.verdict().name());
    out.writeInt(wada.ends().size());
    for (int end : wada.ends()) {
      out.writeInt(end);
    }
    write(wada.share(), out);
    out.writeUTF(wada.source());
    out.writeUTF(wada.sentence());
  }

  static StoredSummary read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      StoredSurvey survey = StoredSurvey.read(in.readNBytes(in.readInt()));
      List<OutcomeShare> shares = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        shares.add(
            new OutcomeShare(
                in.readInt(), in.readInt(), in.readDouble(), in.readDouble(), in.readDouble()));
      }
      var summary =
          new BasinSummary(
              shares,
              readFigure(in),
              readFigure(in),
              readFigure(in),
              readFigure(in),
              readWada(in),
              in.readUTF());
      return new StoredSummary(survey, summary, readDrawn(in));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static Optional<SummaryFigure> readFigure(DataInputStream in) throws IOException {
    return in.readBoolean()
        ? Optional.of(
            new SummaryFigure(
                in.readDouble(), in.readDouble(), in.readDouble(), in.readUTF(), in.readUTF()))
        : Optional.empty();
  }

  private static WadaFinding readWada(DataInputStream in) throws IOException {
    WadaTest.Verdict verdict = WadaTest.Verdict.valueOf(in.readUTF());
    List<Integer> ends = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      ends.add(in.readInt());
    }
    return new WadaFinding(verdict, ends, readFigure(in), in.readUTF(), in.readUTF());
  }

  private static Optional<Drawn> readDrawn(DataInputStream in) throws IOException {
    return in.readBoolean()
        ? Optional.of(new Drawn(in.readInt(), in.readDouble(), in.readDouble()))
        : Optional.empty();
  }
}
