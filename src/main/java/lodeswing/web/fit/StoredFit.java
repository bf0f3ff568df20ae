package lodeswing.web.fit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.analysis.fit.FitResult;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.Regression;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;

/**
 * What a fit found, as it is stored.
 *
 * @param found as {@link FitShapes#FOUND} has it
 */
record StoredFit(Body found) {

  private static final double NONE = -1;

  static StoredFit of(FitResult result, double noise) {
    Regression regression = result.regression();
    int sought = regression.parameters().size();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("values", result.values());
    members.put(
        "errors", list(sought, k -> regression.determined(k) ? regression.standardError(k) : NONE));
    members.put(
        "halves", list(sought, k -> regression.determined(k) ? regression.halfWidth(k) : NONE));
    members.put(
        "correlations", list(sought * sought, i -> regression.correlation(i / sought, i % sought)));
    members.put("mirrored", result.frame().mirrored());
    members.put("used", (double) result.used());
    members.put("end", result.end().word());
    members.put("converged", regression.converged());
    members.put("residualRms", regression.residualRms());
    members.put("noise", noise);
    members.put("neighbours", result.neighbourCorrelation());
    members.put("fittedX", list(result.used(), result::planX));
    members.put("fittedY", list(result.used(), result::planY));
    double[][] knots = result.knots();
    List<String> columns = List.of("t", "x", "y", "vx", "vy");
    for (int k = 0; k < columns.size(); k++) {
      members.put(columns.get(k), Arrays.stream(knots[k]).boxed().toList());
    }
    return new StoredFit(Body.of(members));
  }

  private static List<Double> list(int count, IntToDoubleFunction value) {
    return IntStream.range(0, count).mapToDouble(value).boxed().toList();
  }

  byte[] written() {
    return found.toJson().getBytes(StandardCharsets.UTF_8);
  }

  static StoredFit read(byte[] bytes) {
    return new StoredFit(BodyReader.read(bytes, FitShapes.FOUND));
  }

  int used() {
    return (int) found.number("used");
  }

  /** Time of the last fitted place after the first one [s]. */
  double until(Recording recording) {
    return recording.since(used() - 1);
  }

  /** Root of the mean square of the residuals [m]. */
  double residual() {
    return found.number("residualRms");
  }

  /** Noise of the recording [m]. */
  double noise() {
    return found.number("noise");
  }

  double value(int place) {
    return found.numbers("values").get(place);
  }

  /** Whether the recording tells one of what was sought. */
  boolean determined(int sought) {
    return found.numbers("errors").get(sought) != NONE;
  }

  double standardError(int sought) {
    return found.numbers("errors").get(sought);
  }

  double halfWidth(int sought) {
    return found.numbers("halves").get(sought);
  }

  double correlation(int one, int other) {
    int sought = found.numbers("errors").size();
    return found.numbers("correlations").get(one * sought + other);
  }

  RecordingFrame frame() {
    return new RecordingFrame(value(5), value(6), value(7), value(8), found.flag("mirrored"));
  }

  /** The fitted path in SI, from the release on; the place alone where it has no length. */
  PathCurve path() {
    List<double[]> columns = new ArrayList<>();
    for (String name : List.of("t", "x", "y", "vx", "vy")) {
      columns.add(found.numbers(name).stream().mapToDouble(Double::doubleValue).toArray());
    }
    if (columns.get(0).length == 0) {
      return new PathCurve(
          new double[] {0},
          new double[] {value(0)},
          new double[] {value(1)},
          new double[1],
          new double[1]);
    }
    return new PathCurve(
        columns.get(0), columns.get(1), columns.get(2), columns.get(3), columns.get(4));
  }
}
