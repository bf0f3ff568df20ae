package lodeswing.analysis.twins;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.HermiteCubic;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.PlanScale;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.TrendLine;

/**
 * Compares two paths of one landscape, time by time.
 *
 * <p>1. The separation is known as long as both paths are right, both models hold, and the distance
 * is above a billionth of the swing ({@link #RESOLVED_SHARE}); beyond nothing is told of it.
 *
 * <p>2. It grows by a rate only while it is small beside the magnets' spacing and both bobs may
 * still end anywhere. So the window of its growth begins at the release and ends where the distance
 * with velocities has grown to a sixth of that spacing, or where the first end was decided, unless
 * that was within one small swing, or where the separation is no longer known.
 *
 * <p>3. The rate is the slope of the logarithm of the distance with velocities, by least squares
 * ({@link TrendLine}), with neighbours dependent over one small swing and as many degrees of
 * freedom as the window has small swings, less one.
 *
 * <p>4. The finite-time Lyapunov exponents over the same window are those of an infinitesimal shift
 * in the direction of the pair's own, beside each of the two paths.
 */
public final class Twins {

  /**
   * Share of the swing below which a distance of two computed paths says nothing: a hundred times
   * the error that a step may make.
   */
  public static final double RESOLVED_SHARE = 1e-9;

  /** A decided end within so many small swings does not end the window. */
  private static final double EARLY = 1;

  /** The shortest window, in small swings. */
  private static final double SHORTEST = 0.5;

  private static final int FEWEST_VALUES = 8;
  private static final int HALVINGS = 50;

  /** Points of the curve at most. */
  private static final int MOST_POINTS = 4_000;

  private final PlanScale scale;
  private final double rate;
  private final TwinGrid grid;

  /**
   * A comparison.
   *
   * @param landscape where both swing
   * @param duration how long they are compared, above 0
   */
  public Twins(Landscape landscape, double duration) {
    this.scale = landscape.planScale();
    this.rate = landscape.motion().naturalRate();
    this.grid = TwinGrid.of(duration, rate);
  }

  /** Where both paths are to be looked at. */
  public TwinGrid grid() {
    return grid;
  }

  /** Compares two paths; the order of the two changes nothing but the order of their exponents. */
  public TwinsResult compare(TwinPath first, TwinPath second) {
    return new Comparison(first, second).result();
  }

  /** A stretch of the grid from 0 on, and what ends it. */
  private record Stretch(int count, Cut end) {

    /** The shorter of this and one that something else ends. */
    Stretch cut(int other, Cut by) {
      return other < count ? new Stretch(other, by) : this;
    }
  }

  /** One pair. */
  private final class Comparison {

    private final TwinPath first;
    private final TwinPath second;
    private final double[] distance;
    private final double[] phase;
    private final double swing;

    Comparison(TwinPath first, TwinPath second) {
      this.first = first;
      this.second = second;
      int both = Math.min(first.watch().taken(), second.watch().taken());
      this.distance = new double[both];
      this.phase = new double[both];
      for (int i = 0; i < both; i++) {
        distance[i] = Math.hypot(gap(0, i), gap(1, i));
        phase[i] = Math.hypot(distance[i], Math.hypot(gap(2, i), gap(3, i)) / rate);
      }
      this.swing = Math.max(swing(first.watch()), swing(second.watch()));
    }

    private double gap(int c, int i) {
      return second.watch().plan(c, i) - first.watch().plan(c, i);
    }

    private double swing(TwinWatch watch) {
      return Math.max(
          Math.hypot(watch.plan(0, 0), watch.plan(1, 0)),
          Math.hypot(watch.plan(2, 0), watch.plan(3, 0)) / rate);
    }

    TwinsResult result() {
      Stretch shown = shown();
      double parted = scale.spacing(swing);
      return new TwinsResult(
          shown.end() == Cut.TRUST ? trusted() : grid.t(shown.count() - 1),
          shown.end(),
          rate,
          parted,
          partedAt(shown.count(), parted),
          growth(shown),
          curve(shown.count()));
    }

    private Stretch shown() {
      Stretch all = new Stretch(grid.count(), Cut.DURATION);
      all = all.cut(distance.length, Cut.MODEL);
      all = all.cut(upTo(trusted()), Cut.TRUST);
      int resolved = 1;
      while (resolved < all.count() && phase[resolved] >= RESOLVED_SHARE * swing) {
        resolved++;
      }
      return all.cut(resolved, Cut.RESOLUTION);
    }

    private double trusted() {
      double never = Double.POSITIVE_INFINITY;
      return Math.min(first.trustedUntil().orElse(never), second.trustedUntil().orElse(never));
    }

    /** How many times of the grid lie up to a time; the one at 0 always does. */
    private int upTo(double time) {
      return (int) Math.max(1, Math.min(grid.count(), Math.floor(time / grid.interval()) + 1));
    }

    private OptionalDouble partedAt(int count, double parted) {
      for (int i = 0; i < count; i++) {
        if (distance[i] >= parted) {
          return OptionalDouble.of(i == 0 ? 0 : passage(i - 1, parted));
        }
      }
      return OptionalDouble.empty();
    }

    /** When the cubic between two times of the grid passes a distance. */
    private double passage(int i, double parted) {
      double low = 0;
      double high = 1;
      for (int n = 0; n < HALVINGS; n++) {
        double half = 0.5 * (low + high);
        if (Math.hypot(between(0, i, half), between(1, i, half)) >= parted) {
          high = half;
        } else {
          low = half;
        }
      }
      return grid.t(i) + high * grid.interval();
    }

    private double between(int c, int i, double part) {
      double h = grid.interval();
      return HermiteCubic.value(
          gap(c, i), h * gap(c + 2, i), gap(c, i + 1), h * gap(c + 2, i + 1), part);
    }

    private Optional<TwinsResult.Growth> growth(Stretch shown) {
      Stretch window = window(shown);
      double span = grid.t(window.count() - 1);
      double swings = span * rate / (2 * Math.PI);
      if (window.count() < FEWEST_VALUES || swings < SHORTEST) {
        return Optional.empty();
      }
      double[] logs = new double[window.count()];
      Arrays.setAll(logs, i -> Math.log(phase[i]));
      double perSwing = 2 * Math.PI / rate / grid.interval();
      Estimate slope =
          TrendLine.slope(
              logs,
              grid.interval(),
              (int) Math.min(Math.ceil(perSwing), window.count() / 2.0),
              Math.max(1, Math.floor(swings) - 1));
      double mean = Arrays.stream(logs).sum() / logs.length;
      int last = window.count() - 1;
      return Optional.of(
          new TwinsResult.Growth(
              span,
              window.end(),
              slope,
              Math.exp(mean - slope.value() * span / 2),
              first.watch().logGrowth(last) / span,
              second.watch().logGrowth(last) / span));
    }

    private Stretch window(Stretch shown) {
      Stretch window = shown.cut(Math.min(first.watch().flown(), second.watch().flown()), Cut.HELD);
      double never = Double.POSITIVE_INFINITY;
      double sealed = Math.min(first.sealedAt().orElse(never), second.sealedAt().orElse(never));
      if (sealed > EARLY * 2 * Math.PI / rate) {
        window = window.cut(upTo(sealed), Cut.SEALED);
      }
      double linear = scale.linearDistance(swing);
      int small = 0;
      while (small < window.count() && phase[small] < linear) {
        small++;
      }
      return window.cut(small, Cut.PARTING);
    }

    private Separation curve(int count) {
      int stride = 1 + (count - 1) / MOST_POINTS;
      int points = 1 + (count - 1 + stride - 1) / stride;
      double[] t = new double[points];
      double[] apart = new double[points];
      double[] inPhase = new double[points];
      for (int k = 0; k < points; k++) {
        int i = Math.min(k * stride, count - 1);
        t[k] = grid.t(i);
        apart[k] = distance[i];
        inPhase[k] = phase[i];
      }
      return new Separation(t, apart, inPhase);
    }
  }
}
