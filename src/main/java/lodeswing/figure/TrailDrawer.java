package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Turns one path into lines: cut by time into steps of strength and at its horizons. */
final class TrailDrawer {
  /** Points of one path in a picture at most, before it is cut into steps. */
  static final int MOST_POINTS = 12_000;

  /** Greatest distance of the drawn line from the path [px], where the path is not too long. */
  static final double TOLERANCE = 0.1;

  static final double WIDE = 2.1;
  static final double NARROW = 1.15;
  private static final int STEPS = 40;

  private final Sheet sheet;
  private final Trail trail;
  private final int index;
  private final int[] kept;

  TrailDrawer(Sheet sheet, Trail trail, int index) {
    this.sheet = sheet;
    this.trail = trail;
    this.index = index;
    double tolerance = TOLERANCE / sheet.scale();
    int[] some = trail.thinned(tolerance);
    while (some.length > MOST_POINTS) {
      tolerance *= 1.5;
      some = trail.thinned(tolerance);
    }
    this.kept = some;
  }

  /** The path as lines; tells the labels where its ink lies. */
  Shape.Group draw(LabelPlacing labels) {
    List<Shape> lines = new ArrayList<>();
    double dashOffset = 0;
    int next = 1;
    double from = trail.begins();
    for (double to : cuts()) {
      List<double[]> points = new ArrayList<>();
      points.add(pointAt(from, next));
      while (next < kept.length && trail.t(kept[next]) < to) {
        points.add(new double[] {trail.x(kept[next]), trail.y(kept[next])});
        next++;
      }
      points.add(pointAt(to, Math.min(next, kept.length - 1)));
      Stroke stroke = stroke(index, trail, (from + to) / 2);
      double length = ink(points, labels);
      lines.add(new Shape.Polyline(collected(points), stroke, dashOffset));
      dashOffset = stroke.dash() == Dash.SOLID ? 0 : dashOffset + length;
      from = to;
    }
    return new Shape.Group("path", trail.name(), lines);
  }

  /** How the path looks at a time. */
  static Stroke stroke(int index, Trail trail, double time) {
    Trail.Horizons horizons = trail.horizons();
    boolean trusted = time < horizons.trustedUntil().orElse(Double.POSITIVE_INFINITY);
    boolean foretold = time < horizons.foretoldUntil().orElse(Double.POSITIVE_INFINITY);
    double span = trail.ends() - trail.begins();
    double progress = span > 0 ? Math.min(1, Math.max(0, (time - trail.begins()) / span)) : 1;
    Tint tint = new Tint.Age(index, progress, trusted);
    return Stroke.solid(tint, trusted && foretold ? WIDE : NARROW)
        .with(trusted ? Dash.SOLID : Dash.DASHED);
  }

  private NavigableSet<Double> cuts() {
    double begins = trail.begins();
    double ends = trail.ends();
    NavigableSet<Double> cuts = new TreeSet<>();
    if (ends > begins) {
      for (int i = 1; i < STEPS; i++) {
        cuts.add(begins + (ends - begins) * i / STEPS);
      }
      trail.horizons().trustedUntil().ifPresent(cuts::add);
      trail.horizons().foretoldUntil().ifPresent(cuts::add);
      cuts.removeIf(time -> !(time > begins && time < ends));
      cuts.add(ends);
    }
    return cuts;
  }

  /** The drawn line at a time, on the chord that ends at the kept sample numbered {@code upper}. */
  private double[] pointAt(double time, int upper) {
    int a = kept[Math.max(0, upper - 1)];
    int b = kept[upper];
    double span = trail.t(b) - trail.t(a);
    double share = span > 0 ? (time - trail.t(a)) / span : 0;
    return new double[] {
      trail.x(a) + share * (trail.x(b) - trail.x(a)), trail.y(a) + share * (trail.y(b) - trail.y(a))
    };
  }

  private double ink(List<double[]> points, LabelPlacing labels) {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      double x = sheet.pixelX(points.get(i)[0]);
      double y = sheet.pixelY(points.get(i)[1]);
      double fromX = sheet.pixelX(points.get(i - 1)[0]);
      double fromY = sheet.pixelY(points.get(i - 1)[1]);
      labels.ink(fromX, fromY, x, y);
      length += Math.hypot(x - fromX, y - fromY);
    }
    return length;
  }

  private static Points collected(List<double[]> points) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.get(i)[0];
      y[i] = points.get(i)[1];
    }
    return new Points(x, y);
  }
}
