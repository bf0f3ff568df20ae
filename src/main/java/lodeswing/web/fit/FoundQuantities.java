package lodeswing.web.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.core.recording.Recording;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.FigureUnits;
import lodeswing.web.layout.LayoutDocument;

/** What a fit found of each quantity, in the quantity's own unit. */
final class FoundQuantities {

  private final FitRequest request;
  private final StoredFit stored;
  private final FitQuantities quantities;
  private final List<String> sought;

  FoundQuantities(FitRequest request, StoredFit stored) {
    this.request = request;
    this.stored = stored;
    this.quantities = new FitQuantities(request);
    this.sought = quantities.sought();
  }

  /** Names of those that were sought, in order. */
  List<String> sought() {
    return sought;
  }

  /** Value of a quantity in its own unit. */
  double value(String name) {
    return stored.value(quantities.names().indexOf(name)) / quantities.inSi(name);
  }

  double error(String name) {
    return stored.standardError(sought.indexOf(name)) / quantities.inSi(name);
  }

  double half(String name) {
    return stored.halfWidth(sought.indexOf(name)) / quantities.inSi(name);
  }

  boolean determined(String name) {
    return stored.determined(sought.indexOf(name));
  }

  /** Where the search for it began. */
  double begin(String name, Recording recording) {
    return quantities.begin(name, recording);
  }

  /** Correlation of the errors of two. */
  double correlation(String one, String other) {
    return stored.correlation(sought.indexOf(one), sought.indexOf(other));
  }

  /** Its unit, empty for a number. */
  String unit(String name) {
    boolean bench = request.layout().model().equals("bench");
    return switch (name) {
      case "x", "y", "originX", "originY" -> bench ? "mm" : "";
      case "vx", "vy" -> bench ? "mm/s" : "";
      default -> FigureUnits.of(name);
    };
  }

  /** The layout with what was found, rounded where the error is. */
  LayoutDocument layout() {
    Map<String, Double> figures = new LinkedHashMap<>();
    for (String name : quantities.figures()) {
      double step = determined(name) ? Math.pow(10, Math.floor(Math.log10(error(name))) - 2) : 0;
      double value = value(name);
      boolean round = step > 0 && step < Math.abs(value) && Double.isFinite(step);
      figures.put(name, round ? Numbers.toDigits(Math.rint(value / step) * step, 12) : value);
    }
    return FitQuantities.changed(request.layout(), figures);
  }
}
