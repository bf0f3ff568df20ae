package lodeswing.render;

/**
 * An sRGB colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Rgb(int red, int green, int blue) {

  /**
   * @throws IllegalArgumentException where a part lies outside 0 to 255
   */
  public Rgb {
    if (((red | green | blue) & ~0xFF) != 0) {
      throw new IllegalArgumentException("A colour's parts lie between 0 and 255.");
    }
  }

  /** The colour of a 24-bit number, red highest. */
  public static Rgb of(int packed) {
    return new Rgb((packed >> 16) & 0xFF, (packed >> 8) & 0xFF, packed & 0xFF);
  }

  /** The colour as a 24-bit number, red highest. */
  public int packed() {
    return (red << 16) | (green << 8) | blue;
  }

  /** As {@code #rrggbb}. */
  public String hex() {
    return String.format("#%06x", packed());
  }

  /** A mixture: this colour at share 0, the other at share 1. */
  public Rgb towards(Rgb other, double share) {
    return new Rgb(
        mixed(red, other.red, share),
        mixed(green, other.green, share),
        mixed(blue, other.blue, share));
  }

  /**
   * Relative luminance, 0 to 1. Source: W3C, Web Content Accessibility Guidelines 2.2, definition
   * of relative luminance.
   */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /**
   * Contrast ratio with another colour, 1 to 21. Source: WCAG 2.2, definition of contrast ratio.
   */
  public double contrast(Rgb other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  /**
   * A colour of this hue that has a contrast ratio with it: darker where there is room, else
   * lighter.
   *
   * @param ratio 1 to 4.5
   */
  public Rgb contrasting(double ratio) {
    double darker = (luminance() + 0.05) / ratio - 0.05;
    double wanted = darker >= 0 ? darker : (luminance() + 0.05) * ratio - 0.05;
    return Lab.of(this).withLightness(Lab.lightness(wanted)).rgb();
  }

  static double linear(int part) {
    double value = part / 255.0;
    return value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
  }

  private static int mixed(int from, int to, double share) {
    return (int) Math.round(from + (to - from) * share);
  }
}
