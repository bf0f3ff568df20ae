package lodeswing.render.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads path data of the forms M x y and l dx dy ... (W3C, SVG 1.1, section 8.3.9). */
final class SvgPathReader {
  private static final Pattern TOKEN =
      Pattern.compile("[Mlz]|-?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)");

  private SvgPathReader() {}

  static List<double[]> points(String data) {
    List<double[]> points = new ArrayList<>();
    Matcher tokens = TOKEN.matcher(data);
    boolean relative = false;
    double x = 0;
    double y = 0;
    while (tokens.find()) {
      String token = tokens.group();
      if (token.equals("M") || token.equals("l")) {
        relative = token.equals("l");
        continue;
      }
      double first = Double.parseDouble(token);
      if (!tokens.find()) {
        throw new IllegalArgumentException("An odd count of numbers.");
      }
      double second = Double.parseDouble(tokens.group());
      x = relative ? x + first : first;
      y = relative ? y + second : second;
      points.add(new double[] {x, y});
    }
    return points;
  }
}
