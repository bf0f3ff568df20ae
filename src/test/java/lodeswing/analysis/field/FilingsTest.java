package lodeswing.analysis.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.field.Frame;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Pole;
import org.junit.jupiter.api.Test;

/** What filings show: direction, gaps, where they gather; and that a seed settles all. */
class FilingsTest {

  private static final Disc PUCK = new Disc(0.0125, 0.005, 0.385);
  private static final PlateField PLATE =
      Plates.of(PUCK, new double[][] {{-0.03, 0}, {0.03, 0}}, Pole.NORTH);
  private static final double PAPER = 0.0035;
  private static final double LENGTH = 0.0025;
  private static final double HALF = 0.07;
  private static final Frame WINDOW = Frame.square(0, 0, HALF, 2);

  private static Filings.Strewn strewn(LaneProvider lanes, long seed) {
    return new Filings(PLATE, lanes, WINDOW, PLATE.level(PAPER), LENGTH)
        .strew(6_000, seed, f -> {});
  }

  @Test
  void filingsLieAlongTheField() {
    Filings.Strewn all = strewn(LaneProvider.choose(), 1);
    double[] b = new double[3];
    int along = 0;
    for (int n = 0; n < all.count(); n++) {
      PLATE.magnets().field(all.x(n, 1), all.y(n, 1), PAPER, b);
      double dx = all.x(n, 2) - all.x(n, 0);
      double dy = all.y(n, 2) - all.y(n, 0);
      double cosine = (dx * b[0] + dy * b[1]) / (Math.hypot(dx, dy) * Math.hypot(b[0], b[1]));
      along += cosine > Math.cos(0.35) ? 1 : 0;
    }
    assertTrue(along > 0.95 * all.count(), along + " of " + all.count());
  }

  @Test
  void gapShowsAtTheSaddleBetweenLikePolesAndFilingsGatherAtTheMagnets() {
    Filings.Strewn all = strewn(LaneProvider.choose(), 2);
    int atSaddle = 0;
    int atRims = 0;
    for (int n = 0; n < all.count(); n++) {
      double x = all.x(n, 1);
      double y = all.y(n, 1);
      atSaddle += Math.hypot(x, y) < 0.0025 ? 1 : 0;
      double rim = Math.abs(Math.hypot(Math.abs(x) - 0.03, y) - 0.0125);
      atRims += rim < 0.0025 ? 1 : 0;
    }
    double area = 4 * HALF * HALF;
    double evenAtSaddle = 6_000 * Math.PI * 0.0025 * 0.0025 / area;
    double evenAtRims = 6_000 * 2 * Math.PI * 0.0125 * 0.005 * 2 / area;
    assertTrue(atSaddle < 0.35 * evenAtSaddle, atSaddle + " of " + evenAtSaddle);
    assertTrue(atRims > 1.25 * evenAtRims, atRims + " of " + evenAtRims);
  }

  @Test
  void seedSettlesAllOnAnyLanes() {
    Filings.Strewn first = strewn(LaneProvider.choose(), 3);
    Filings.Strewn again = strewn(LaneProvider.scalar("a test"), 3);
    Filings.Strewn other = strewn(LaneProvider.choose(), 4);
    assertEquals(List.of(places(first)), List.of(places(again)));
    assertTrue(!places(first).equals(places(other)));
  }

  private static String places(Filings.Strewn all) {
    StringBuilder text = new StringBuilder();
    for (int n = 0; n < all.count(); n++) {
      text.append(all.x(n, 0)).append(' ').append(all.y(n, 2)).append(all.width(n)).append('\n');
    }
    return text.toString();
  }
}
