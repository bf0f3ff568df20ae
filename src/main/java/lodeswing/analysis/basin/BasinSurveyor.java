package lodeswing.analysis.basin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.ReleaseSource;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;

/**
 * Looks over a window: how long releases take, and down to which zoom labels can be told.
 *
 * <p>1. A coarse grid, labelled at its own tolerance and at one ten times tighter, gives the median
 * of the sealing times, the share of steady labels, and pairs of steady neighbours that end
 * differently: between them lies a boundary. Where the bob swings so long that no arithmetic of
 * doubles can tell its end, labels are not steady at any tolerance.
 *
 * <p>2. At zooms four apart, rows of pixels across each boundary are labelled at the zoom's own
 * tolerance and at one ten times tighter. While no more than a twentieth of the labels change, each
 * row is narrowed to a boundary within it.
 *
 * <p>3. Where more change, the zooms between are tried one by one. The last that holds is the
 * deepest. Rows lie across boundaries, so that a twentieth of them is far less of any tile.
 */
public final class BasinSurveyor {

  private static final int COARSE = 24;
  private static final int PLACES = 6;
  private static final int ROW = 12;
  private static final int ZOOMS_A_ROUND = 4;
  private static final int TILE = 256;
  private static final int MOST_ZOOM = 48;

  /** Part of the labels that may change when the tolerance is tightened tenfold. */
  private static final double CHANGED_SHARE = 0.05;

  private final Landscape landscape;
  private final BasinWindow window;
  private final OutcomeFinders finders;
  private final double longest;

  /**
   * A surveyor of a window.
   *
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   */
  public BasinSurveyor(
      Landscape landscape, BasinWindow window, OutcomeFinders finders, double longest) {
    this.landscape = landscape;
    this.window = window;
    this.finders = finders;
    this.longest = longest;
  }

  /**
   * Looks over the window.
   *
   * @param progress told the fraction done; may throw to end the work
   */
  public BasinSurvey survey(DoubleConsumer progress) {
    PixelGrid coarse = PixelGrid.whole(window, COARSE, COARSE);
    Ends usual = find(coarse, window.tolerance(landscape, coarse.pixel()), 0, progress);
    Ends tight = find(coarse, window.tighter(landscape, coarse.pixel()), 0.25, progress);
    double steady =
        (double) IntStream.range(0, coarse.count()).filter(i -> same(usual, tight, i)).count()
            / coarse.count();
    List<Crossing> crossings = crossings(coarse, usual, tight);
    return new BasinSurvey(deepest(crossings, steady == 1, progress), halfTime(usual), steady);
  }

  private Ends find(PixelGrid grid, Tolerance tolerance, double begun, DoubleConsumer progress) {
    return find(grid.count(), grid, tolerance, part -> progress.accept(begun + part / 4));
  }

  private static boolean same(Ends usual, Ends tight, int i) {
    return usual.end(i) == tight.end(i);
  }

  private double halfTime(Ends ends) {
    double[] times =
        IntStream.range(0, ends.size())
            .filter(i -> ends.end(i) >= 0)
            .mapToDouble(ends::sealedAt)
            .filter(time -> time > 0)
            .sorted()
            .toArray();
    double period = 2 * Math.PI / landscape.motion().naturalRate();
    return times.length == 0 ? period : times[times.length / 2];
  }

  /** A place on a boundary, and the direction in which it is crossed. */
  private record Crossing(double x, double y, boolean level) {
    Crossing moved(double along) {
      return level ? new Crossing(x + along, y, true) : new Crossing(x, y + along, false);
    }
  }

  /** Middles between steady neighbours that end differently, spread over the window. */
  private static List<Crossing> crossings(PixelGrid grid, Ends usual, Ends tight) {
    List<Crossing> all = new ArrayList<>();
    for (int row = 0; row + 1 < grid.height(); row++) {
      for (int column = 0; column + 1 < grid.width(); column++) {
        int here = row * grid.width() + column;
        double half = 0.5 * grid.pixel();
        if (boundary(usual, tight, here, here + 1)) {
          all.add(new Crossing(grid.x(column) + half, grid.y(row), true));
        }
        if (boundary(usual, tight, here, here + grid.width())) {
          all.add(new Crossing(grid.x(column), grid.y(row) - half, false));
        }
      }
    }
    int kept = Math.min(PLACES, all.size());
    return IntStream.range(0, kept).mapToObj(i -> all.get(i * all.size() / kept)).toList();
  }

  private static boolean boundary(Ends usual, Ends tight, int one, int other) {
    return same(usual, tight, one)
        && same(usual, tight, other)
        && usual.end(one) != usual.end(other);
  }

  private int deepest(List<Crossing> crossings, boolean alone, DoubleConsumer progress) {
    int last = 0;
    while (last < MOST_ZOOM && window.resolves(pixel(last + 1))) {
      last++;
    }
    if (crossings.isEmpty()) {
      return alone ? last : 0;
    }
    int good = 0;
    List<Crossing> places = crossings;
    for (int zoom = 1; zoom <= last; zoom += ZOOMS_A_ROUND) {
      Rows rows = rows(places, zoom);
      if (!rows.holds()) {
        break;
      }
      good = zoom;
      places = rows.narrowed();
      progress.accept(0.5 + 0.5 * zoom / last);
    }
    for (int zoom = good + 1; zoom < good + ZOOMS_A_ROUND && zoom <= last; zoom++) {
      if (!rows(places, zoom).holds()) {
        return zoom - 1;
      }
    }
    return Math.min(last, good + ZOOMS_A_ROUND - 1);
  }

  private double pixel(int zoom) {
    return Math.scalb(2 * window.halfWidth() / TILE, -zoom);
  }

  private Rows rows(List<Crossing> places, int zoom) {
    double pixel = pixel(zoom);
    ReleaseSource source =
        (from, to, out) -> {
          Arrays.fill(out, 0);
          for (int i = from; i < to; i++) {
            Crossing place = places.get(i / ROW).moved(offset(i % ROW) * pixel);
            out[4 * (i - from)] = place.x();
            out[4 * (i - from) + 1] = place.y();
          }
        };
    int count = places.size() * ROW;
    Ends usual = find(count, source, window.tolerance(landscape, pixel), part -> {});
    Ends tight = find(count, source, window.tighter(landscape, pixel), part -> {});
    return new Rows(places, pixel, usual, tight);
  }

  /** Pixels from the middle of a row. */
  private static double offset(int i) {
    return i - 0.5 * (ROW - 1);
  }

  private Ends find(int count, ReleaseSource source, Tolerance tolerance, DoubleConsumer progress) {
    return new ParallelOutcomes(finders.of(landscape, tolerance, longest))
        .find(count, source, progress);
  }

  /** Rows of pixels across boundaries, labelled at two tolerances. */
  private record Rows(List<Crossing> places, double pixel, Ends usual, Ends tight) {

    boolean holds() {
      int changed = 0;
      for (int i = 0; i < usual.size(); i++) {
        changed += usual.end(i) == tight.end(i) ? 0 : 1;
      }
      return changed <= CHANGED_SHARE * usual.size();
    }

    /** The boundary nearest to the middle of each row; the middle itself where none is left. */
    List<Crossing> narrowed() {
      List<Crossing> narrowed = new ArrayList<>();
      for (int p = 0; p < places.size(); p++) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < ROW; i++) {
          double middle = offset(i) + 0.5;
          boolean boundary = tight.end(p * ROW + i) != tight.end(p * ROW + i + 1);
          if (boundary && Math.abs(middle) < Math.abs(best)) {
            best = middle;
          }
        }
        narrowed.add(Double.isFinite(best) ? places.get(p).moved(best * pixel) : places.get(p));
      }
      return narrowed;
    }
  }
}
