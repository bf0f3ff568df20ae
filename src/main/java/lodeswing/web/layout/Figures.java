package lodeswing.web.layout;

import lodeswing.web.body.Numbers;

/** Figures in sentences: SI in, the builder's units out, rounded to what a ruler or scale shows. */
final class Figures {
  private Figures() {}

  /** Metres as millimetres, to a hundredth. */
  static String millimetres(double metres) {
    return Numbers.shortest(Math.rint(metres * 1e5) / 100) + " mm";
  }

  /** Kilograms as grams, to a tenth. */
  static String grams(double kilograms) {
    return Numbers.shortest(Math.rint(kilograms * 1e4) / 10) + " g";
  }
}
