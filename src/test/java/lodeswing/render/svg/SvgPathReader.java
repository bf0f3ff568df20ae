package lodeswing.render.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads path data of the forms M x y, l dx dy ... and c dx1 dy1 dx2 dy2 dx dy ..., the controls of
 * cubics among the points (W3C, SVG 1.1, section 8.3.9).
 */
final class SvgPathReader {
  private static final Pattern TOKEN =
      Pattern.compile("[Mlcz]|-?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)");

  private SvgPathReader() {}

  static List<double[]> points(String data) {
    List<double[]> points = new ArrayList<>();
    Matcher tokens = TOKEN.matcher(data);
    String command = "M";
    int pairs = 0;
    double x = 0;
    double y = 0;
    while (tokens.find()) {
      String token = tokens.group();
      if (Character.isLetter(token.charAt(0))) {
        command = token;
        pairs = 0;
        continue;
      }
      double first = Double.parseDouble(token);
      if (!tokens.find()) {
        throw new IllegalArgumentException("An odd count of numbers.");
      }
      double second = Double.parseDouble(tokens.group());
      double[] point = command.equals("M") ? new double[2] : new double[] {x, y};
      point[0] += first;
      point[1] += second;
      points.add(point);
      // All three pairs of a cubic are relative to the place where it begins.
      if (!command.equals("c") || ++pairs % 3 == 0) {
        x = point[0];
        y = point[1];
      }
    }
    return points;
  }
}
