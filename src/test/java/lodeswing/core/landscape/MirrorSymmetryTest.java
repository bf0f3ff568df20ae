package lodeswing.core.landscape;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import org.junit.jupiter.api.Test;

class MirrorSymmetryTest {

  private static MirrorSymmetry of(Attractor... magnets) {
    return Landscape.of(new TextbookLayout(0.5, 0.2, 0.3, List.of(magnets))).symmetry();
  }

  private static Attractor magnet(double x, double y, double strength) {
    return new Attractor(x, y, strength);
  }

  @Test
  void triangleOnTheAxisIsItsOwnPictureInOneMirror() {
    MirrorSymmetry symmetry =
        of(magnet(0.57735, 0, 1), magnet(-0.28868, 0.5, 1), magnet(-0.28868, -0.5, 1));

    assertFalse(symmetry.turnsX());
    assertTrue(symmetry.turnsY());
    assertEquals(0, symmetry.unfold(0, false, true));
    assertEquals(2, symmetry.unfold(1, false, true));
    assertEquals(1, symmetry.unfold(2, false, true));
    assertEquals(-3, symmetry.unfold(-3, false, true));
  }

  @Test
  void squareIsItsOwnPictureInBoth() {
    MirrorSymmetry symmetry =
        of(magnet(0.5, 0.5, 1), magnet(-0.5, 0.5, 1), magnet(-0.5, -0.5, 1), magnet(0.5, -0.5, 1));

    assertTrue(symmetry.turnsX());
    assertTrue(symmetry.turnsY());
    for (int end = 0; end < 4; end++) {
      assertEquals((end + 2) % 4, symmetry.unfold(end, true, true), "across the middle");
    }
  }

  @Test
  void anUnlikeOrMisplacedMagnetBreaksIt() {
    assertFalse(
        of(magnet(0.57735, 0, 1), magnet(-0.28868, 0.5, 1), magnet(-0.28868, -0.5, 1.01)).turnsY());
    assertFalse(
        of(magnet(0.57735, 0, 1), magnet(-0.28868, 0.5, 1), magnet(-0.28868, -0.501, 1)).turnsY());
    assertFalse(
        of(magnet(0.57735, 1e-6, 1), magnet(-0.28868, 0.5, 1), magnet(-0.28868, -0.5, 1)).turnsY());
  }

  @Test
  void foldedReleasesLieOnOneSideAndUnfoldToThemselves() {
    MirrorSymmetry symmetry =
        of(magnet(0.5, 0.5, 1), magnet(-0.5, 0.5, 1), magnet(-0.5, -0.5, 1), magnet(0.5, -0.5, 1));
    double[] releases = {1, -2, 3, 4, -1, 2, 3, 4, 0, 0, -1, -1, -1, -2, -3, -4, 1, 2, -3, -4};

    byte[] turned = symmetry.fold(releases);

    assertArrayEquals(
        new double[] {1, 2, 3, -4, 1, 2, -3, 4, 0, 0, 1, 1, 1, 2, 3, 4, 1, 2, -3, -4}, releases);
    List<Integer> ends = new ArrayList<>();
    for (byte one : turned) {
      ends.add(symmetry.unfold(0, one));
    }
    assertEquals(List.of(3, 1, 2, 2, 0), ends);
  }

  @Test
  void nothingIsFoldedWithoutAMirror() {
    double[] releases = {-1, -1, 0, 0};
    byte[] turned = of(magnet(0.3, 0.1, 1), magnet(-0.2, 0.4, 2)).fold(releases);
    assertEquals(0, turned.length);
    assertArrayEquals(new double[] {-1, -1, 0, 0}, releases);
  }
}
