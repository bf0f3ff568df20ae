package lodeswing.web.swingcount;

import lodeswing.analysis.swingcount.Measured;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.LayoutDocument;

/**
 * The length that tells one suspension of a kind from another, in millimetres.
 *
 * @param name what the layout calls it
 * @param words the same in words
 * @param own what the layout says
 * @param counted what the counted swings say
 */
record CountedLength(String name, String words, double own, Measured counted) {

  private static final double MM = 1e3;

  /**
   * The length of a layout.
   *
   * @param lengthening how much longer its suspension would be as counted [m]
   */
  static CountedLength of(LayoutDocument layout, BenchLayout rig, Measured lengthening) {
    double own = rig.suspension().body().bobArm() * MM;
    var counted = new Measured(own + lengthening.value() * MM, lengthening.error() * MM);
    return switch (layout.canonical().object("pendulum").text("kind")) {
      case "cord" -> new CountedLength("lengthMm", "length", own, counted);
      case "yoke" -> new CountedLength("legMm", "leg", own, counted);
      default -> new CountedLength("bobFromTopMm", "distance from hook to bob", own, counted);
    };
  }
}
