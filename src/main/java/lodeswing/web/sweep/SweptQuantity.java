package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.FigureUnits;

/**
 * A quantity that is varied, with its values in order.
 *
 * @param name a figure of the layout, or x, y, vx or vy of the release
 * @param values numbers, or texts where the figure is a word
 */
record SweptQuantity(String name, List<Object> values) {

  /** The figures of a release. */
  static final Set<String> OF_RELEASE = Set.of("x", "y", "vx", "vy");

  SweptQuantity {
    values = List.copyOf(values);
  }

  /** From a body that {@link SweepShapes} has read and {@link SweepReview} finds no fault with. */
  static SweptQuantity of(Body body) {
    return new SweptQuantity(body.text("quantity"), values(body));
  }

  private static List<Object> values(Body body) {
    if (body.members().get("values") instanceof List<?> listed) {
      return List.copyOf(listed);
    }
    double from = body.number("from");
    double to = body.number("to");
    int steps = (int) body.number("steps");
    boolean log = body.findText("spacing").orElse("even").equals("log");
    List<Object> values = new ArrayList<>(steps);
    for (int i = 0; i < steps; i++) {
      double part = (double) i / (steps - 1);
      double value =
          log ? from * StrictMath.exp(part * StrictMath.log(to / from)) : from + (to - from) * part;
      values.add(i == 0 ? from : i == steps - 1 ? to : plain(value));
    }
    return values;
  }

  /** Twelve digits, so that the value in the table is the one that was computed with. */
  private static double plain(double value) {
    return Numbers.toDigits(value, 12);
  }

  Body body() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("quantity", name);
    members.put("values", values);
    return Body.of(members);
  }

  boolean ofRelease() {
    return OF_RELEASE.contains(name);
  }

  /** Whether its values have places on an even axis. */
  boolean numbers() {
    return values.stream().allMatch(Double.class::isInstance);
  }

  /** A value as a query has it. */
  static String written(Object value) {
    return value instanceof Double number ? Numbers.shortest(number) : value.toString();
  }

  /** A value in a sentence, to six digits. */
  static String told(Object value) {
    return value instanceof Double number
        ? Numbers.shortest(Numbers.toDigits(number, 6))
        : value.toString();
  }

  /** Its unit; empty for a plain number or a word. */
  String unit(boolean bench) {
    String member = name.substring(name.lastIndexOf('.') + 1);
    if (bench && (member.equals("x") || member.equals("y"))) {
      return "mm";
    }
    if (bench && ofRelease()) {
      return "mm/s";
    }
    return FigureUnits.of(name);
  }

  /** Its name in words, without the unit. */
  String words() {
    String words = FigureUnits.words(name);
    return ofRelease() ? "release " + words : words;
  }

  /** Its column in a CSV table. */
  String csvName(boolean bench) {
    String snake = name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    return unit(bench).equals("mm") && !snake.endsWith("_mm")
        ? snake + "_mm"
        : unit(bench).equals("mm/s") ? snake + "_mm_per_s" : snake;
  }
}
