package lodeswing.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.magnet.AxialPull;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import org.junit.jupiter.api.Test;

class ContactPullTest {

  private static final Disc NEODYMIUM = new Disc(0.0075, 0.005, 1.195);
  private static final Disc FERRITE = new Disc(0.0125, 0.005, 0.385);

  /**
   * At g = 0.1 mm, pi Br Br' R R'/mu0 times the integral of J1(kR) J1(kR')/k exp(-kg) (1-exp(-kh))
   * (1-exp(-kh')) over k, which is the formula of D. Vokoun and others, J. Magn. Magn. Mater. 321
   * (2009) 3758, for unlike radii; by Gauss's rule between zeros in other code: 5.561133 N.
   */
  @Test
  void unlikeDiscsPullAsThePublishedFormulaSays() {
    assertEquals(5.561133, ContactPull.of(NEODYMIUM, FERRITE).force(), 1e-5);
    assertEquals(
        ContactPull.of(NEODYMIUM, FERRITE).force(), ContactPull.of(FERRITE, NEODYMIUM).force());
  }

  /** Of one shape the forces go with the product of the remanences. */
  @Test
  void sameShapesPullByTheProductOfTheirRemanences() {
    double own = ContactPull.ofLike(NEODYMIUM);
    assertEquals(
        1.1 * own, ContactPull.of(NEODYMIUM, NEODYMIUM.strengthened(1.1)).force(), 1e-9 * own);
    Block block = new Block(0.02, 0.01, 0.005, 1.2);
    Block weak = new Block(0.02, 0.01, 0.005, 0.4);
    assertEquals(ContactPull.ofLike(block) / 3, ContactPull.of(weak, block).force(), 1e-9);
  }

  @Test
  void noPullIsBeyondItsBound() {
    Magnet[] magnets = {
      NEODYMIUM,
      FERRITE,
      new Ring(0.003, 0.008, 0.01, 1.2),
      new Block(0.02, 0.01, 0.03, 1.3),
      new Sphere(0.006, 1.2)
    };
    for (Magnet one : magnets) {
      for (Magnet other : magnets) {
        ContactPull pull = ContactPull.of(one, other);
        assertTrue(pull.force() <= 1.01 * pull.bound(), one + " " + other);
      }
    }
  }

  @Test
  void gapOfAForceGivesTheForceBack() {
    ContactPull pull = ContactPull.of(NEODYMIUM, FERRITE);
    double gap = pull.gapAt(0.065);
    assertEquals(0.065, new AxialPull(FERRITE, NEODYMIUM).at(gap), 1e-4);
    assertEquals(0, pull.gapAt(100));
  }

  @Test
  void dipolesTouchNowhere() {
    assertThrows(IllegalArgumentException.class, () -> ContactPull.of(new Dipole(1), NEODYMIUM));
  }
}
