package lodeswing.core.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.chance.PolygonSpread.Corner;
import lodeswing.core.rig.Release;
import org.junit.jupiter.api.Test;

class SpreadTest {

  private static final int MANY = 1 << 14;
  private static final Release AIM = new Release(0.03, -0.02, 0.1, -0.2);

  private static double[] tries(Spread spread, double push) {
    return new Tries(new HandSpread(AIM, spread, push), 3).next(MANY);
  }

  private static double mean(double[] releases, int column) {
    double sum = 0;
    for (int i = column; i < releases.length; i += 4) {
      sum += releases[i];
    }
    return sum / MANY;
  }

  private static double deviation(double[] releases, int column) {
    double middle = mean(releases, column);
    double sum = 0;
    for (int i = column; i < releases.length; i += 4) {
      sum += (releases[i] - middle) * (releases[i] - middle);
    }
    return Math.sqrt(sum / MANY);
  }

  @Test
  void normalHandHasItsDeviationInPlaceAndPush() {
    double[] releases = tries(new NormalSpread(0.003), 0.02);
    double[] meant = {AIM.x(), AIM.y(), AIM.vx(), AIM.vy()};
    double[] deviation = {0.003, 0.003, 0.02, 0.02};
    for (int column = 0; column < 4; column++) {
      assertEquals(meant[column], mean(releases, column), 0.005 * deviation[column]);
      assertEquals(deviation[column], deviation(releases, column), 0.01 * deviation[column]);
    }
  }

  @Test
  void withoutAPushSpreadThePushIsTheMeantOne() {
    double[] releases = tries(new NormalSpread(0.003), 0);
    for (int i = 0; i < releases.length; i += 4) {
      assertEquals(AIM.vx(), releases[i + 2]);
      assertEquals(AIM.vy(), releases[i + 3]);
    }
  }

  /** A quarter of a disc's area lies within half its radius; its deviation is half the radius. */
  @Test
  void discIsFilledEvenly() {
    DiscSpread disc = new DiscSpread(0.004);
    double[] releases = tries(disc, 0);
    int inside = 0;
    for (int i = 0; i < releases.length; i += 4) {
      double away = Math.hypot(releases[i] - AIM.x(), releases[i + 1] - AIM.y());
      assertTrue(away <= 0.004 * (1 + 1e-12));
      inside += away < 0.002 ? 1 : 0;
    }
    assertEquals(0.25, (double) inside / MANY, 0.002);
    assertEquals(disc.size(), deviation(releases, 0), 0.01 * disc.size());
  }

  @Test
  void ringHasNothingInItsHole() {
    RingSpread ring = new RingSpread(0.003, 0.005);
    double[] releases = tries(ring, 0);
    int nearer = 0;
    for (int i = 0; i < releases.length; i += 4) {
      double away = Math.hypot(releases[i] - AIM.x(), releases[i + 1] - AIM.y());
      assertTrue(away >= 0.003 * (1 - 1e-12) && away <= 0.005 * (1 + 1e-12));
      nearer += away < 0.004 ? 1 : 0;
    }
    assertEquals(7.0 / 16, (double) nearer / MANY, 0.003);
    assertEquals(ring.size(), deviation(releases, 1), 0.01 * ring.size());
  }

  /** An L of three unit squares: a third of it in each, its centroid at 5/6 (by hand). */
  @Test
  void polygonIsFilledEvenly() {
    PolygonSpread corner =
        new PolygonSpread(
            List.of(
                new Corner(0, 0),
                new Corner(2, 0),
                new Corner(2, 1),
                new Corner(1, 1),
                new Corner(1, 2),
                new Corner(0, 2)));
    double[] releases = tries(corner, 0);

    assertEquals(3, corner.area());
    assertEquals(0.75, corner.filled());
    assertFalse(corner.crossed());
    assertEquals(AIM.x() + 5.0 / 6, mean(releases, 0), 0.003);
    assertEquals(AIM.y() + 5.0 / 6, mean(releases, 1), 0.003);
    for (int i = 0; i < releases.length; i += 4) {
      assertFalse(releases[i] - AIM.x() > 1 && releases[i + 1] - AIM.y() > 1);
    }
  }

  @Test
  void polygonThatCrossesItselfIsSeen() {
    List<Corner> bow =
        List.of(new Corner(0, 0), new Corner(1, 1), new Corner(1, 0), new Corner(0, 1));
    assertTrue(new PolygonSpread(bow).crossed());
    assertEquals(
        0,
        new PolygonSpread(List.of(new Corner(0, 0), new Corner(1, 1), new Corner(2, 2))).filled());
  }
}
