package lodeswing.web.swingcount;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lodeswing.analysis.swingcount.CountedFigures;
import lodeswing.analysis.swingcount.Figure;
import lodeswing.analysis.swingcount.Measured;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.problem.ProblemException;

/**
 * The layout that would swing as counted.
 *
 * @param layout the layout
 * @param changes its figures that differ from the asked one's, by the names of variants
 */
record Suggestion(LayoutDocument layout, Map<String, String> changes) {

  private static final double MM = 1e3;
  private static final double MICROMETRES = 1e3;
  private static final int DIGITS = 4;

  /**
   * The layout with the counted loss and, where it disagrees with its own, the counted length.
   *
   * @return empty where nothing differs, or nobody could build what does
   */
  static Optional<Suggestion> of(
      LayoutDocument document, BenchLayout rig, CountedFigures counted, boolean keepLength) {
    Map<String, String> changes = new LinkedHashMap<>();
    double longer =
        keepLength ? 0 : counted.find(Figure.LENGTHENING).map(Measured::value).orElse(0.0);
    if (longer != 0) {
      lengths(document, longer * MM).forEach((name, mm) -> changes.put(name, written(mm)));
    }
    if (counted.find(Figure.SWINGS_TO_HALF).isPresent()) {
      double loss = counted.get(Figure.LINEAR_LOSS).value();
      changes.put(
          "swingsToHalf",
          Numbers.shortest(
              Numbers.toDigits(
                  swingsToHalf(rig.suspension().lengthened(longer), rig, loss), DIGITS)));
    }
    if (changes.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Suggestion(LayoutOverrides.apply(document, changes, Set.of()), changes));
    } catch (ProblemException e) {
      return Optional.empty();
    }
  }

  private static String written(double mm) {
    return Numbers.shortest(Math.rint(mm * MICROMETRES) / MICROMETRES);
  }

  /** A layout counts swings along x by its period without magnets. */
  private static double swingsToHalf(Suspension hung, BenchLayout rig, double loss) {
    TwoAxisBody body = hung.body();
    double gamma = new LossLaw(loss, List.of(), 0).linearRate(body);
    return 2 * Math.log(2) / (gamma * 2 * Math.PI / body.rateX(rig.gravity()));
  }

  /** The lengths of a suspension that is longer as a whole [mm]. */
  private static Map<String, Double> lengths(LayoutDocument document, double longer) {
    Body pendulum = document.canonical().object("pendulum");
    Map<String, Double> lengths = new LinkedHashMap<>();
    switch (pendulum.text("kind")) {
      case "cord" -> lengths.put("lengthMm", pendulum.number("lengthMm") + longer);
      case "yoke" -> lengths.put("legMm", pendulum.number("legMm") + longer);
      default -> {
        List<Body> parts = pendulum.objects("parts");
        for (int i = 0; i < parts.size(); i++) {
          lengths.put("part." + (i + 1) + ".fromTopMm", parts.get(i).number("fromTopMm") + longer);
        }
        if (pendulum.has("bobFromTopMm")) {
          lengths.put("bobFromTopMm", pendulum.number("bobFromTopMm") + longer);
        }
      }
    }
    return lengths;
  }

  /** The changes as a query. */
  String query() {
    return changes.entrySet().stream()
        .map(one -> one.getKey() + "=" + one.getValue())
        .collect(Collectors.joining("&"));
  }
}
