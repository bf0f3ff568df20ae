package lodeswing.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FluxIndexTest {

  private static double index(Magnet magnet) {
    return FluxIndex.of(magnet).orElseThrow().value();
  }

  @Test
  void dipoleHasNoFace() {
    assertTrue(FluxIndex.of(new Dipole(0.5)).isEmpty());
  }

  /** The rim of a flat disc reads more than its middle, and a finite figure. */
  @Test
  void flatDiscReadsMostNearItsRim() {
    var disc = new Disc(0.0125, 0.005, 0.385);
    double[] b = new double[3];
    disc.field(0, 0, 0.0025 + FluxIndex.PROBE_DISTANCE, b);
    assertTrue(FluxIndex.of(disc).orElseThrow().reading() > 1.4 * b[2]);
  }

  @Test
  void ringsHoleIsNoPartOfItsFace() {
    FluxIndex ring = FluxIndex.of(new Ring(0.006, 0.015, 0.006, 0.385)).orElseThrow();
    assertEquals(Math.PI * (0.015 * 0.015 - 0.006 * 0.006), ring.area(), 1e-15);
  }

  @Test
  void sphereCountsByItsGreatestSection() {
    FluxIndex sphere = FluxIndex.of(new Sphere(0.0025, 1.2)).orElseThrow();
    assertEquals(Math.PI * 0.0025 * 0.0025, sphere.area(), 1e-15);
    assertEquals(0.8 * Math.pow(0.0025 / 0.00288, 3), sphere.reading(), 1e-9);
  }

  /** What the standard lets the probe differ by, 0.13 mm, moves the index as the notes say. */
  @Test
  void probesToleranceMovesTheIndexByATenthToAThird() {
    var usual = new Disc(0.0075, 0.005, 1.195);
    var tiny = new Disc(0.0015, 0.003, 1.305);
    assertEquals(0.1, spread(usual), 0.02);
    assertEquals(0.25, spread(tiny), 0.08);
  }

  private static double spread(Magnet magnet) {
    double near = FluxIndex.of(magnet, 0.25e-3).orElseThrow().value();
    return near / index(magnet) - 1;
  }

  @Property(tries = 40)
  void indexGoesWithTheSquareOfTheRemanence(
      @ForAll @DoubleRange(min = 1, max = 30) double acrossMm,
      @ForAll @DoubleRange(min = 0.5, max = 30) double highMm,
      @ForAll @DoubleRange(min = 0.1, max = 3) double factor) {
    double across = 1e-3 * acrossMm;
    double high = 1e-3 * highMm;
    for (Magnet magnet :
        new Magnet[] {new Disc(across, high, 0.4), new Block(across, 2 * across, high, 0.4)}) {
      double ratio = index(magnet.strengthened(factor)) / index(magnet);
      assertEquals(factor * factor, ratio, 1e-9 * ratio);
    }
  }

  /** The search finds no less than a fine grid does. */
  @Property(tries = 40)
  void noPlaceOfTheFaceReadsMore(
      @ForAll @DoubleRange(min = 1, max = 30) double lengthMm,
      @ForAll @DoubleRange(min = 1, max = 30) double widthMm,
      @ForAll @DoubleRange(min = 0.5, max = 30) double highMm,
      @ForAll @DoubleRange(min = 0, max = 1) double x,
      @ForAll @DoubleRange(min = 0, max = 1) double y) {
    double length = 1e-3 * lengthMm;
    double width = 1e-3 * widthMm;
    double high = 1e-3 * highMm;
    double[] b = new double[3];
    var block = new Block(length, width, high, 1);
    block.field(x * length / 2, y * width / 2, high / 2 + FluxIndex.PROBE_DISTANCE, b);
    assertTrue(FluxIndex.of(block).orElseThrow().reading() >= (1 - 1e-3) * b[2]);
    var disc = new Disc(length, high, 1);
    disc.field(x * length, 0, high / 2 + FluxIndex.PROBE_DISTANCE, b);
    assertTrue(FluxIndex.of(disc).orElseThrow().reading() >= (1 - 1e-3) * b[2]);
  }
}
