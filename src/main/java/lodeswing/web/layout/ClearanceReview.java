package lodeswing.web.layout;

import java.util.List;
import java.util.Optional;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.body.Body;

/** Looks for things that would be in each other's way, with the figure of each. */
final class ClearanceReview {

  /** Nearer than this counts as touching [m]: what a ruler and a steady hand cannot tell. */
  static final double TOUCHING = 0.01e-3;

  /** A bob nearer than this to anything at rest is warned about [m]: a cord's stretch. */
  static final double NEAR = 0.5e-3;

  /** Sine of 60 degrees: no swing of a bench rig goes farther. */
  private static final double WIDEST_SWING = Math.sqrt(3) / 2;

  private final Body layout;
  private final SentPlaces places;
  private final LayoutFindings findings;

  ClearanceReview(Body layout, SentPlaces places, LayoutFindings findings) {
    this.layout = layout;
    this.places = places;
    this.findings = findings;
  }

  /** Looks at the gap alone. */
  void ofGap() {
    double gap = layout.number("gapMm") / 1000;
    String at = places.of("/gapMm");
    if (gap < 0) {
      findings.impossible(
          at, "the bob would hang " + Figures.millimetres(-gap) + " inside the plate at rest");
    } else if (gap < NEAR) {
      findings.warn(
          "bob-near-plate",
          at,
          "The bob hangs only " + Figures.millimetres(gap) + " over the plate at rest.");
    }
  }

  /**
   * Looks at everything that needs no suspension.
   *
   * @param solids the room of each magnet; empty where a magnet has a fault of its own
   */
  void ofMagnets(List<Optional<Solid>> solids) {
    for (int i = 0; i < solids.size(); i++) {
      if (solids.get(i).isPresent()) {
        Solid solid = solids.get(i).get();
        againstOthers(i, solid, solids);
        againstSteel(i, solid);
        againstPlate(i, solid);
      }
    }
    bobAtRest(solids);
  }

  private void againstOthers(int index, Solid solid, List<Optional<Solid>> solids) {
    for (int j = 0; j < index; j++) {
      double overlap = solids.get(j).map(solid::overlap).orElse(Double.NEGATIVE_INFINITY);
      if (overlap > TOUCHING) {
        findings.impossible(
            places.magnet(index),
            "magnet "
                + (index + 1)
                + " reaches "
                + Figures.millimetres(overlap)
                + " into magnet "
                + (j + 1)
                + "; move them apart by that much");
      } else if (overlap >= -TOUCHING) {
        findings.warn(
            "magnets-touch",
            places.magnet(index),
            "Magnet " + (index + 1) + " just touches magnet " + (j + 1) + ".");
      }
    }
  }

  private void againstSteel(int index, Solid solid) {
    layout
        .findObject("backing")
        .ifPresent(
            steel -> {
              double into = steel.number("topMm") / 1000 - solid.bottom();
              if (into > TOUCHING) {
                findings.impossible(
                    places.magnet(index, "bottomMm"),
                    "magnet "
                        + (index + 1)
                        + " reaches "
                        + Figures.millimetres(into)
                        + " into the steel, whose upper face is at "
                        + Figures.millimetres(steel.number("topMm") / 1000));
              }
            });
  }

  private void againstPlate(int index, Solid solid) {
    layout
        .findObject("plate")
        .ifPresent(
            plate -> {
              double extent =
                  plate.text("shape").equals("round") ? solid.farthest() : solid.widest();
              double over = extent - plate.number("widthMm") / 2000;
              if (over > TOUCHING) {
                findings.warn(
                    "magnet-off-plate",
                    places.magnet(index),
                    "Magnet "
                        + (index + 1)
                        + " reaches "
                        + Figures.millimetres(over)
                        + " beyond the plate's edge.");
              }
            });
  }

  private void bobAtRest(List<Optional<Solid>> solids) {
    double gap = layout.number("gapMm") / 1000;
    String at = places.of("/gapMm");
    layout
        .findObject("backing")
        .map(steel -> steel.number("topMm") / 1000 - gap)
        .filter(into -> into > 0)
        .ifPresent(
            into ->
                findings.impossible(
                    at, "the bob would hang " + Figures.millimetres(into) + " inside the steel"));
    Solid bob =
        layout
            .findObject("bobMagnet")
            .map(magnet -> MagnetMapper.solid(magnet, 0, 0, gap))
            .orElseGet(() -> new Ball(0, 0, gap, Ball.GRAIN));
    for (int i = 0; i < solids.size(); i++) {
      bobAgainst(i, solids.get(i).map(bob::overlap).orElse(Double.NEGATIVE_INFINITY), at);
    }
  }

  private void bobAgainst(int index, double overlap, String at) {
    if (overlap > TOUCHING) {
      findings.impossible(
          at,
          "the bob at rest would reach "
              + Figures.millimetres(overlap)
              + " into magnet "
              + (index + 1)
              + "; make the gap larger or move the magnet");
    } else if (overlap > -NEAR) {
      findings.warn(
          "bob-near-magnet",
          at,
          "At rest the bob is only "
              + Figures.millimetres(Math.max(0, -overlap))
              + " from magnet "
              + (index + 1)
              + ".");
    }
  }

  /** Looks at what depends on the pendulum's length. */
  void ofWhole(BenchLayout bench) {
    var body = bench.suspension().body();
    double reach = (body.axisOffset() + body.bobArm()) * WIDEST_SWING;
    for (int i = 0; i < bench.magnets().size(); i++) {
      var centre = bench.magnets().get(i).centre();
      double distance = Math.hypot(centre.x(), centre.y());
      if (distance > reach) {
        findings.warn(
            "magnet-beyond-swing",
            places.magnet(i),
            "Magnet "
                + (i + 1)
                + " stands "
                + Figures.millimetres(distance)
                + " from the middle; the bob swings "
                + Figures.millimetres(reach)
                + " at most.");
      }
    }
    layout
        .findObject("stand")
        .filter(stand -> stand.has("heightMm"))
        .map(stand -> bench.axisHeight() - stand.number("heightMm") / 1000)
        .filter(missing -> missing > TOUCHING)
        .ifPresent(
            missing ->
                findings.warn(
                    "stand-too-low",
                    places.of("/stand/heightMm"),
                    "The pivot must be "
                        + Figures.millimetres(bench.axisHeight())
                        + " over the plate; the stand is "
                        + Figures.millimetres(missing)
                        + " too low."));
  }
}
