package lodeswing.core.regression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fitter against certified values.
 *
 * <p>Source: NIST/ITL Statistical Reference Datasets, nonlinear least squares regression
 * (itl.nist.gov/div898/strd/nls); values certified to 11 digits by two programs in quadruple
 * precision. Each set is begun from both published starts, of which the first is far away.
 */
class StatisticalReferenceDataTest {

  /** Where a curve leaves what numbers can hold; far beyond every observation. */
  private static final double FARTHEST = 1e100;

  private static final Map<String, ToDoubleBiFunction<double[], Double>> CURVES =
      Map.ofEntries(
          Map.entry("Misra1a", StatisticalReferenceDataTest::saturation),
          Map.entry("DanWood", (b, x) -> b[0] * Math.pow(x, b[1])),
          Map.entry(
              "Lanczos3",
              (b, x) ->
                  b[0] * Math.exp(-b[1] * x)
                      + b[2] * Math.exp(-b[3] * x)
                      + b[4] * Math.exp(-b[5] * x)),
          Map.entry("Roszman1", (b, x) -> b[0] - b[1] * x - Math.atan(b[2] / (x - b[3])) / Math.PI),
          Map.entry(
              "MGH17", (b, x) -> b[0] + b[1] * Math.exp(-b[3] * x) + b[2] * Math.exp(-b[4] * x)),
          Map.entry(
              "Thurber",
              (b, x) ->
                  (b[0] + x * (b[1] + x * (b[2] + x * b[3])))
                      / (1 + x * (b[4] + x * (b[5] + x * b[6])))),
          Map.entry("Rat42", (b, x) -> b[0] / (1 + Math.exp(b[1] - b[2] * x))),
          Map.entry("Rat43", (b, x) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3])),
          Map.entry("MGH09", (b, x) -> b[0] * x * (x + b[1]) / (x * (x + b[2]) + b[3])),
          Map.entry("MGH10", (b, x) -> b[0] * Math.exp(b[1] / (x + b[2]))),
          Map.entry("BoxBOD", StatisticalReferenceDataTest::saturation),
          Map.entry(
              "Eckerle4",
              (b, x) -> {
                double off = (x - b[2]) / b[1];
                return b[0] / b[1] * Math.exp(-off * off / 2);
              }));

  private static double saturation(double[] b, double x) {
    return b[0] * (1 - Math.exp(-b[1] * x));
  }

  private static Stream<Arguments> setsAndStarts() {
    return CURVES.keySet().stream()
        .sorted()
        .flatMap(set -> Stream.of(Arguments.of(set, 0), Arguments.of(set, 1)));
  }

  /** At the certified values the residuals are the certified ones, so the data are as published. */
  @ParameterizedTest
  @MethodSource("setsAndStarts")
  void theFitMeetsTheCertifiedValues(String name, int start) throws IOException {
    Dataset set = Dataset.read(name);
    ToDoubleBiFunction<double[], Double> formula =
        Optional.ofNullable(CURVES.get(name)).orElseThrow();
    CurveModel curve = at -> set.curve(formula, at);
    double[] certified = set.column(2);
    double squares = 0;
    double[] values = curve.values(certified);
    for (int i = 0; i < values.length; i++) {
      double off = set.points().get(i)[0] - values[i];
      squares += off * off;
    }
    assertEquals(set.residual(), squares, 1e-7 * set.residual(), "data as published");

    double[] from = set.column(start);
    List<FreeParameter> free = new ArrayList<>();
    for (int k = 0; k < from.length; k++) {
      free.add(FreeParameter.unbounded("b" + (k + 1), from[k], Math.abs(from[k])));
    }
    double[] observed = set.points().stream().mapToDouble(point -> point[0]).toArray();
    Regression fit = new NonlinearRegression(1e-13, 5_000).fit(curve, free, observed);
    assertTrue(fit.converged(), "converged");
    for (int k = 0; k < from.length; k++) {
      String what = name + " " + (start + 1) + " b" + (k + 1);
      assertEquals(certified[k], fit.value(k), 1e-6 * Math.abs(certified[k]), what);
      double deviation = set.column(3)[k];
      assertEquals(deviation, fit.standardError(k), 1e-4 * deviation, what + " deviation");
    }
  }

  /** A set as its file has it. */
  private record Dataset(double residual, List<double[]> parameters, List<double[]> points) {

    static Dataset read(String name) throws IOException {
      double residual = Double.NaN;
      List<double[]> parameters = new ArrayList<>();
      List<double[]> points = new ArrayList<>();
      for (String line : text(name).lines().filter(line -> !line.startsWith("#")).toList()) {
        String[] words = line.split(" ");
        double[] numbers = Stream.of(words).skip(1).mapToDouble(Double::parseDouble).toArray();
        switch (words[0]) {
          case "residual" -> residual = numbers[0];
          case "parameter" -> parameters.add(numbers);
          default -> points.add(numbers);
        }
      }
      return new Dataset(residual, parameters, points);
    }

    private static String text(String name) throws IOException {
      try (InputStream file =
          StatisticalReferenceDataTest.class.getResourceAsStream(name + ".dat")) {
        return new String(file.readAllBytes(), StandardCharsets.UTF_8);
      }
    }

    double[] column(int at) {
      return parameters.stream().mapToDouble(row -> row[at]).toArray();
    }

    double[] curve(ToDoubleBiFunction<double[], Double> formula, double[] at) {
      return points.stream()
          .mapToDouble(point -> formula.applyAsDouble(at, point[1]))
          .map(y -> Double.isNaN(y) ? FARTHEST : Math.max(-FARTHEST, Math.min(FARTHEST, y)))
          .toArray();
    }
  }
}
