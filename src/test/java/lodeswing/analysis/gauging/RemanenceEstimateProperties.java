package lodeswing.analysis.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lodeswing.core.magnet.AxialPull;
import lodeswing.core.magnet.EqualPull;
import lodeswing.core.magnet.Magnet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is measured on a magnet of known remanence leads back to it. */
class RemanenceEstimateProperties {

  private static final double MM = 1e-3;

  private static MagnetSize size(int form, double across, double height) {
    return switch (form) {
      case 0 -> new MagnetSize(MagnetSize.Form.DISC, List.of(height, across));
      case 1 -> new MagnetSize(MagnetSize.Form.RING, List.of(height, across, across / 3));
      default -> new MagnetSize(MagnetSize.Form.BLOCK, List.of(height, across, across / 2));
    };
  }

  /** Forces by the pendulum's energy, the field by the closed form: exact, so that all agree. */
  @Property(tries = 30, seed = "11")
  void exactReadingsGiveTheRemanenceBack(
      @ForAll @IntRange(max = 2) int form,
      @ForAll @DoubleRange(min = 4, max = 40) double acrossMm,
      @ForAll @DoubleRange(min = 2, max = 30) double heightMm,
      @ForAll @DoubleRange(min = 0.2, max = 1.5) double remanence) {
    MagnetSize size = size(form, acrossMm * MM, heightMm * MM);
    Magnet magnet = size.unit().strengthened(remanence);
    double apart = 2 * acrossMm * MM;
    double pull = new AxialPull(magnet, magnet).at(apart);
    double[] b = new double[3];
    magnet.field(0, 0, magnet.halfHeight() + apart, b);
    double weight = 7500 * magnet.volume() * Reading.GRAVITY;
    double lift = lift(magnet, weight);
    List<Reading> readings = new ArrayList<>();
    readings.add(new Reading.OffEqual(pull, 0.05, apart, 0.5 * MM));
    readings.add(new Reading.OffSteel(pull, 0.05, apart / 2, 0.05 * MM, 0.05 * MM));
    readings.add(new Reading.OnAxis(Math.abs(b[2]), 0.05, 0, apart, 2 * MM));
    if (lift > 1e-4) {
      readings.add(new Reading.LiftOfEqual(7500, 0.02, lift, 0.5 * MM));
    }
    RemanenceEstimate found = RemanenceEstimate.of(size, 0.1 * MM, readings);
    assertEquals(remanence, found.result().value(), 1e-6 * remanence);
    double widest = 1;
    for (RemanenceRange one : found.readings()) {
      assertEquals(remanence, one.value(), 1e-6 * remanence);
      widest = Math.max(widest, one.high() / one.low());
    }
    assertTrue(found.result().high() / found.result().low() <= widest + 1e-9);
    assertTrue(found.agree());
  }

  /** The gap at which the pull is the weight, by halving. */
  private static double lift(Magnet magnet, double weight) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (new EqualPull(magnet).at(middle) > weight) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Readings that are off as their uncertainties say: 95 of 100 ranges are to hold the truth. Of
   * 400, 380 are expected with a standard deviation of 4.4; three of them are allowed on the low
   * side.
   */
  @Test
  void rangesHoldTheTruthAsOftenAsTheySay() {
    Random random = new Random(7);
    int held = 0;
    for (int trial = 0; trial < 400; trial++) {
      MagnetSize truth = size(0, 15 * MM, 5 * MM);
      Magnet magnet = truth.unit().strengthened(1.2);
      double sigma = 1 / 1.96;
      double apart = 20 * MM;
      double pull = new EqualPull(magnet).at(apart) * (1 + 0.05 * sigma * random.nextGaussian());
      double[] b = new double[3];
      magnet.field(0, 0, magnet.halfHeight() + 60 * MM, b);
      double field = b[2] * (1 + 0.05 * sigma * random.nextGaussian());
      List<Reading> readings =
          List.of(
              new Reading.OffEqual(
                  pull, 0.05, apart + 0.5 * MM * sigma * random.nextGaussian(), 0.5 * MM),
              new Reading.OnAxis(
                  field, 0.05, 0, 60 * MM + 2 * MM * sigma * random.nextGaussian(), 2 * MM));
      MagnetSize measured =
          truth
              .changed(0, 0.1 * MM * sigma * random.nextGaussian())
              .changed(1, 0.1 * MM * sigma * random.nextGaussian());
      RemanenceRange range = RemanenceEstimate.of(measured, 0.1 * MM, readings).result();
      held += range.low() <= 1.2 && 1.2 <= range.high() ? 1 : 0;
    }
    assertTrue(held >= 367, held + " of 400");
  }

  @Test
  void contactTellsTheLeastAndIsOnlyHeldAgainstOthers() {
    MagnetSize size = size(0, 15 * MM, 5 * MM);
    Magnet magnet = size.unit().strengthened(1.2);
    double hidden = new EqualPull(magnet).onSteel(0.08 * MM);
    Reading contact = new Reading.OffSteel(hidden, 0.02, 0, 0, 0.1 * MM);
    RemanenceEstimate alone = RemanenceEstimate.of(size, 0, List.of(contact));
    assertTrue(alone.leastOnly());
    assertTrue(alone.result().value() < 1.2 && alone.result().high() > 1.2);
    Reading apart = new Reading.OffEqual(new EqualPull(magnet).at(0.02), 0.05, 0.02, 0.5 * MM);
    RemanenceEstimate both = RemanenceEstimate.of(size, 0, List.of(contact, apart));
    assertFalse(both.leastOnly());
    assertEquals(1.2, both.result().value(), 1e-9);
    assertTrue(both.agree());
    Reading strong = new Reading.OffSteel(4 * hidden, 0.02, 0, 0, 0.1 * MM);
    assertFalse(RemanenceEstimate.of(size, 0, List.of(strong, apart)).agree());
  }

  /** Two readings apart by three of their widths: the range is widened and called at odds. */
  @Test
  void readingsAtOddsWidenTheRange() {
    MagnetSize size = size(0, 15 * MM, 5 * MM);
    double pull = new EqualPull(size.unit().strengthened(1.2)).at(0.02);
    Reading one = new Reading.OffEqual(pull, 0.05, 0.02, 0);
    Reading other = new Reading.OffEqual(1.32 * pull, 0.05, 0.02, 0);
    RemanenceEstimate same = RemanenceEstimate.of(size, 0, List.of(one, one));
    RemanenceEstimate odd = RemanenceEstimate.of(size, 0, List.of(one, other));
    assertTrue(same.agree());
    assertFalse(odd.agree());
    double narrow = same.result().high() / same.result().low();
    assertTrue(odd.result().high() / odd.result().low() > Math.pow(narrow, 2));
    assertTrue(odd.result().low() < 1.25 && odd.result().high() > 1.3);
  }

  /** A ring's field turns round on its axis, near the hole. */
  @Test
  void aRingsFieldTurnsRound() {
    MagnetSize ring = size(1, 15 * MM, 5 * MM);
    assertFalse(new Reading.OnAxis(1e-3, 0.05, 0, 1 * MM, 2 * MM).oneWay(ring.unit()));
    assertTrue(new Reading.OnAxis(1e-3, 0.05, 0, 40 * MM, 2 * MM).oneWay(ring.unit()));
  }
}
