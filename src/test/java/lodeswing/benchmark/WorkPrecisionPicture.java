package lodeswing.benchmark;

import java.util.List;
import java.util.Locale;
import lodeswing.core.outcome.LaneScheme;

/** Draws labels wrong over time a release, both on logarithmic scales, a panel for each scene. */
final class WorkPrecisionPicture {

  private static final int WIDTH = 420;
  private static final int HEIGHT = 320;
  private static final int LEFT = 60;
  private static final int TOP = 58;
  private static final double LEAST_WRONG = 0.5;
  private static final double MOST_WRONG = 1e4;

  /** Tints apart in lightness too, with a dash pattern each. */
  private static final String[] TINTS = {"#1d5f8a", "#b5561c", "#4b4b4b"};

  private static final String[] DASHES = {"none", "7 3", "2 3"};

  private WorkPrecisionPicture() {}

  /** Microseconds a release and labels wrong, of one scheme. */
  record Series(LaneScheme scheme, List<double[]> points) {}

  static String whole(String panels) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
        + 2 * (WIDTH + LEFT + 30)
        + " "
        + (HEIGHT + 124)
        + "\" font-family=\"sans-serif\" font-size=\"13\" role=\"img\">"
        + "<title>Labels wrong over time a release, for each scheme on lanes</title>"
        + "<rect width=\"100%\" height=\"100%\" fill=\"#fdfcf8\"/>"
        + panels
        + "</svg>\n";
  }

  static String panel(String name, int side, List<Series> series) {
    double least = 1e9;
    double most = 0;
    for (Series s : series) {
      for (double[] p : s.points) {
        least = Math.min(least, p[0]);
        most = Math.max(most, p[0]);
      }
    }
    double low = Math.log10(0.8 * least);
    double high = Math.log10(1.25 * most);
    int shift = name.equals("textbook") ? 0 : WIDTH + LEFT + 30;
    StringBuilder out = new StringBuilder();
    out.append(String.format(Locale.ROOT, "<g transform=\"translate(%d 0)\">", shift + LEFT));
    text(out, 0, 24, name + ", " + side + " × " + side + " releases");
    line(out, 0, TOP + HEIGHT, WIDTH, TOP + HEIGHT);
    line(out, 0, TOP, 0, TOP + HEIGHT);
    for (double wrong : new double[] {0, 1, 5, 10, 100, 1_000, 10_000}) {
      double y = y(wrong);
      line(out, -5, y, 0, y);
      text(out, -52, y + 4, String.format(Locale.ROOT, "%.0f", wrong));
    }
    for (double time : new double[] {1, 2, 3, 5, 7, 10, 15, 20, 30, 50}) {
      double x = WIDTH * (Math.log10(time) - low) / (high - low);
      if (x >= 0 && x <= WIDTH) {
        line(out, x, TOP + HEIGHT, x, TOP + HEIGHT + 5);
        text(out, x - 6, TOP + HEIGHT + 20, String.format(Locale.ROOT, "%.0f", time));
      }
    }
    text(out, WIDTH / 2.0 - 70, TOP + HEIGHT + 40, "microseconds a release");
    text(out, -52, TOP - 12, "labels wrong");
    for (int k = 0; k < series.size(); k++) {
      Series s = series.get(k);
      int tint = tint(s.scheme);
      StringBuilder places = new StringBuilder();
      for (double[] p : s.points) {
        double x = WIDTH * (Math.log10(p[0]) - low) / (high - low);
        places.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y(p[1])));
        out.append(
            String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\"/>",
                x,
                y(p[1]),
                TINTS[tint]));
      }
      out.append(
          String.format(
              "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.6\""
                  + " stroke-dasharray=\"%s\"/>",
              places, TINTS[tint], DASHES[tint]));
      double at = TOP + 14 + 20 * k;
      out.append(
          String.format(
              Locale.ROOT,
              "<line x1=\"%d\" y1=\"%.0f\" x2=\"%d\" y2=\"%.0f\" stroke=\"%s\""
                  + " stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
              WIDTH - 130,
              at - 4,
              WIDTH - 100,
              at - 4,
              TINTS[tint],
              DASHES[tint]));
      text(out, WIDTH - 92, at, words(s.scheme));
    }
    return out.append("</g>").toString();
  }

  private static int tint(LaneScheme scheme) {
    return switch (scheme) {
      case NYSTROM_8_6 -> 0;
      case ORDER_8 -> 1;
      case ORDER_5 -> 2;
    };
  }

  private static String words(LaneScheme scheme) {
    return switch (scheme) {
      case NYSTROM_8_6 -> "Nyström 8(6)";
      case ORDER_8 -> "order 8(5, 3)";
      case ORDER_5 -> "order 5(4)";
    };
  }

  private static double y(double wrong) {
    double share =
        Math.log(Math.max(LEAST_WRONG, Math.min(MOST_WRONG, wrong)) / LEAST_WRONG)
            / Math.log(MOST_WRONG / LEAST_WRONG);
    return TOP + HEIGHT * (1 - share);
  }

  private static void line(StringBuilder out, double x1, double y1, double x2, double y2) {
    out.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#333\"/>",
            x1,
            y1,
            x2,
            y2));
  }

  private static void text(StringBuilder out, double x, double y, String words) {
    out.append(
        String.format(
            Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" fill=\"#222\">%s</text>", x, y, words));
  }
}
