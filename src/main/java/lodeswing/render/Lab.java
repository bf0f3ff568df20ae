package lodeswing.render;

/**
 * A colour in CIELAB under D65, where equal steps of lightness look equal.
 *
 * <p>Sources: CIE 015:2018, Colorimetry, section 8.2.1 (L*, a*, b*); IEC 61966-2-1:1999, primaries,
 * white and transfer of sRGB.
 *
 * @param lightness L*, 0 black to 100 white
 * @param a green to red
 * @param b blue to yellow
 */
record Lab(double lightness, double a, double b) {

  private static final double WHITE_X = 0.95047;
  private static final double WHITE_Z = 1.08883;
  private static final double LINEAR_BELOW = 216.0 / 24389;
  private static final double SLOPE = 24389.0 / 27;

  /** A colour this far outside sRGB counts as inside: less than a step of 255. */
  private static final double ROUNDING = 1e-4;

  private static final int HALVINGS = 20;

  /** An sRGB colour. */
  static Lab of(Rgb colour) {
    double red = Rgb.linear(colour.red());
    double green = Rgb.linear(colour.green());
    double blue = Rgb.linear(colour.blue());
    double x = bent((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / WHITE_X);
    double y = bent(0.2126729 * red + 0.7151522 * green + 0.0721750 * blue);
    double z = bent((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / WHITE_Z);
    return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
  }

  /** Lightness of a relative luminance of 0 to 1. */
  static double lightness(double luminance) {
    return 116 * bent(luminance) - 16;
  }

  /** The same hue and chroma at another lightness. */
  Lab withLightness(double other) {
    return new Lab(Math.min(100, Math.max(0, other)), a, b);
  }

  /** As sRGB; where sRGB has no colour so strong, chroma is lowered until it has. */
  Rgb rgb() {
    double low = 0;
    double high = 1;
    if (inside(1)) {
      low = 1;
    } else {
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (inside(middle)) {
          low = middle;
        } else {
          high = middle;
        }
      }
    }
    double[] parts = linear(low);
    return new Rgb(part(parts[0]), part(parts[1]), part(parts[2]));
  }

  private boolean inside(double share) {
    for (double part : linear(share)) {
      if (!(part >= -ROUNDING && part <= 1 + ROUNDING)) {
        return false;
      }
    }
    return true;
  }

  private double[] linear(double share) {
    double fy = (lightness + 16) / 116;
    double x = straight(fy + share * a / 500) * WHITE_X;
    double y = straight(fy);
    double z = straight(fy - share * b / 200) * WHITE_Z;
    return new double[] {
      3.2404542 * x - 1.5371385 * y - 0.4985314 * z,
      -0.9692660 * x + 1.8760108 * y + 0.0415560 * z,
      0.0556434 * x - 0.2040259 * y + 1.0572252 * z
    };
  }

  private static double bent(double value) {
    return value > LINEAR_BELOW ? StrictMath.cbrt(value) : (SLOPE * value + 16) / 116;
  }

  private static double straight(double bent) {
    double cube = bent * bent * bent;
    return cube > LINEAR_BELOW ? cube : (116 * bent - 16) / SLOPE;
  }

  private static int part(double linear) {
    double value = Math.min(1, Math.max(0, linear));
    double curved =
        value <= 0.0031308 ? 12.92 * value : 1.055 * StrictMath.pow(value, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * curved);
  }
}
