package lodeswing.render;

/**
 * Colour difference CIEDE2000 with all weights 1. Source: Sharma, Wu, Dalal, The CIEDE2000
 * color-difference formula: implementation notes, Color Research and Application 30 (2005),
 * equations 2 to 22.
 */
final class Ciede2000 {
  private Ciede2000() {}

  /**
   * CIELAB of linear sRGB parts of 0 to 1. Source: IEC 61966-2-1 (primaries, D65); CIE 15 (Lab).
   */
  static double[] lab(double red, double green, double blue) {
    double x = curve((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047);
    double y = curve(0.2126729 * red + 0.7151522 * green + 0.0721750 * blue);
    double z = curve((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / 1.08883);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  static double between(double[] one, double[] two) {
    double meanChroma = (Math.hypot(one[1], one[2]) + Math.hypot(two[1], two[2])) / 2;
    double stretch = 1.5 - 0.5 * root(meanChroma);
    double a1 = stretch * one[1];
    double a2 = stretch * two[1];
    double c1 = Math.hypot(a1, one[2]);
    double c2 = Math.hypot(a2, two[2]);
    double h1 = angle(one[2], a1);
    double h2 = angle(two[2], a2);
    double turn = 0;
    double hue = h1 + h2;
    if (c1 * c2 != 0) {
      turn = h2 - h1;
      hue = (h1 + h2) / 2;
      if (Math.abs(turn) > 180) {
        turn += turn > 0 ? -360 : 360;
        hue += h1 + h2 < 360 ? 180 : -180;
      }
    }
    double lightness = (one[0] + two[0]) / 2;
    double chroma = (c1 + c2) / 2;
    double weight =
        1
            - 0.17 * cos(hue - 30)
            + 0.24 * cos(2 * hue)
            + 0.32 * cos(3 * hue + 6)
            - 0.20 * cos(4 * hue - 63);
    double square = (lightness - 50) * (lightness - 50);
    double dl = (two[0] - one[0]) / (1 + 0.015 * square / Math.sqrt(20 + square));
    double dc = (c2 - c1) / (1 + 0.045 * chroma);
    double dh =
        2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(turn / 2)) / (1 + 0.015 * chroma * weight);
    double bend = 30 * Math.exp(-Math.pow((hue - 275) / 25, 2));
    double cross = -2 * root(chroma) * Math.sin(Math.toRadians(2 * bend));
    return Math.sqrt(dl * dl + dc * dc + dh * dh + cross * dc * dh);
  }

  private static double root(double chroma) {
    double seventh = Math.pow(chroma, 7);
    return Math.sqrt(seventh / (seventh + Math.pow(25, 7)));
  }

  private static double angle(double b, double a) {
    double degrees = Math.toDegrees(Math.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  private static double curve(double value) {
    return value > 216.0 / 24389 ? Math.cbrt(value) : (24389.0 / 27 * value + 16) / 116;
  }
}
