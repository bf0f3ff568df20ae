package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Units of figures, told from their names: the one place that knows what a name's end means. */
public final class FigureUnits {

  /** Units by the end of a name, the longest first. */
  private static final Map<String, String> UNITS = new LinkedHashMap<>();

  static {
    UNITS.put("MPerS2", "m/s²");
    UNITS.put("NsPerM", "N s/m");
    UNITS.put("Percent", "%");
    UNITS.put("Am2", "A m²");
    UNITS.put("Deg", "°");
    UNITS.put("TimeS", "s");
    UNITS.put("Mm", "mm");
    UNITS.put("Nm", "N m");
    UNITS.put("G", "g");
    UNITS.put("T", "T");
  }

  private FigureUnits() {}

  /** The unit that a figure's name ends in; empty where it ends in none. */
  public static String of(String name) {
    String member = name.substring(name.lastIndexOf('.') + 1);
    return UNITS.keySet().stream()
        .filter(end -> member.endsWith(end) && member.length() > end.length())
        .findFirst()
        .map(end -> UNITS.getOrDefault(end, ""))
        .orElse("");
  }

  /** A figure's name in words, without the unit that it ends in. */
  public static String words(String name) {
    String unit = of(name);
    String plain = name;
    for (Map.Entry<String, String> one : UNITS.entrySet()) {
      if (!unit.isEmpty() && name.endsWith(one.getKey()) && one.getValue().equals(unit)) {
        plain = name.substring(0, name.length() - one.getKey().length());
        break;
      }
    }
    return plain
        .replace('.', ' ')
        .replaceAll("([a-z0-9])([A-Z])", "$1 $2")
        .toLowerCase(Locale.ROOT);
  }
}
