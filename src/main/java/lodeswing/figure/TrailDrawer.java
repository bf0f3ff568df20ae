package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import lodeswing.core.geometry.PathCurve;

/** Turns one path into curves: cut by time into steps of strength and at its horizons. */
final class TrailDrawer {
  /** Pieces of one path in a picture at most, before it is cut into steps. */
  static final int MOST_PIECES = 6_000;

  /** Greatest distance of the drawn curve from the path [px], where the path is not too long. */
  static final double TOLERANCE = 0.1;

  static final double WIDE = 2.1;
  static final double NARROW = 1.15;
  private static final int STEPS = 40;

  /** Length of the chords by which a curve is measured, about [px]. */
  private static final double CHORD = 3;

  private static final int MOST_CHORDS = 64;

  private final Sheet sheet;
  private final Trail trail;
  private final int index;
  private final PathCurve curve;

  TrailDrawer(Sheet sheet, Trail trail, int index) {
    this.sheet = sheet;
    this.trail = trail;
    this.index = index;
    double tolerance = TOLERANCE / sheet.scale();
    PathCurve thinned = trail.curve().thinned(tolerance);
    while (thinned.count() > MOST_PIECES) {
      tolerance *= 2;
      thinned = trail.curve().thinned(tolerance);
    }
    this.curve = thinned;
  }

  /** The path as curves; tells the labels where its ink lies. */
  Shape.Group draw(LabelPlacing labels) {
    List<Shape> lines = new ArrayList<>();
    double dashOffset = 0;
    int next = 1;
    double from = trail.begins();
    for (double to : cuts()) {
      List<double[]> knots = new ArrayList<>();
      knots.add(knot(from));
      while (next < curve.count() && curve.t(next) < to) {
        knots.add(knot(curve.t(next)));
        next++;
      }
      knots.add(knot(to));
      Stroke stroke = stroke(index, trail, (from + to) / 2);
      Points controls = controls(knots);
      double length = ink(controls, labels);
      lines.add(new Shape.Curve(controls, stroke, dashOffset));
      dashOffset = stroke.dash() == Dash.SOLID ? 0 : dashOffset + length;
      from = to;
    }
    return new Shape.Group("path", trail.name(), lines);
  }

  /** Whether the path after a time is seen: where it leaves the surroundings of its last place. */
  boolean seenAfter(double time) {
    double hidden = MarkDrawer.REST / 2 / sheet.scale();
    double[] last = trail.at(trail.ends());
    double[] first = trail.at(Math.min(time, trail.ends()));
    boolean seen = Math.hypot(first[0] - last[0], first[1] - last[1]) > hidden;
    for (int i = curve.count() - 1; !seen && i >= 0 && curve.t(i) > time; i--) {
      seen = Math.hypot(curve.x(i) - last[0], curve.y(i) - last[1]) > hidden;
    }
    return seen && time < trail.ends();
  }

  /** How the path looks at a time. */
  static Stroke stroke(int index, Trail trail, double time) {
    Trail.Horizons horizons = trail.horizons();
    boolean trusted = time < horizons.trustedUntil().orElse(Double.POSITIVE_INFINITY);
    boolean foretold = time < horizons.foretoldUntil().orElse(Double.POSITIVE_INFINITY);
    double span = trail.ends() - trail.begins();
    double progress = span > 0 ? Math.min(1, Math.max(0, (time - trail.begins()) / span)) : 1;
    Tint tint = new Tint.Age(index, progress, trusted);
    return Stroke.solid(tint, trusted && foretold && !trail.isSlender() ? WIDE : NARROW)
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

  private double[] knot(double time) {
    double[] at = new double[5];
    curve.at(time, at);
    at[4] = time;
    return at;
  }

  /** Bezier's controls: a third of the way along the velocities from each end of a piece. */
  private static Points controls(List<double[]> knots) {
    double[] x = new double[3 * knots.size() - 2];
    double[] y = new double[x.length];
    for (int i = 0; i < knots.size(); i++) {
      double[] knot = knots.get(i);
      int k = 3 * i;
      x[k] = knot[0];
      y[k] = knot[1];
      if (i > 0) {
        double third = (knot[4] - knots.get(i - 1)[4]) / 3;
        x[k - 1] = knot[0] - third * knot[2];
        y[k - 1] = knot[1] - third * knot[3];
      }
      if (i < knots.size() - 1) {
        double third = (knots.get(i + 1)[4] - knot[4]) / 3;
        x[k + 1] = knot[0] + third * knot[2];
        y[k + 1] = knot[1] + third * knot[3];
      }
    }
    return new Points(x, y);
  }

  /** Inks the curve for the labels by chords; answers its length [px]. */
  private double ink(Points controls, LabelPlacing labels) {
    double length = 0;
    for (int k = 0; k + 3 < controls.count(); k += 3) {
      double[] x = new double[4];
      double[] y = new double[4];
      double polygon = 0;
      for (int i = 0; i < 4; i++) {
        x[i] = sheet.pixelX(controls.x(k + i));
        y[i] = sheet.pixelY(controls.y(k + i));
        polygon += i > 0 ? Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]) : 0;
      }
      int chords = (int) Math.min(MOST_CHORDS, 1 + Math.floor(polygon / CHORD));
      double fromX = x[0];
      double fromY = y[0];
      for (int i = 1; i <= chords; i++) {
        double toX = bezier(x, (double) i / chords);
        double toY = bezier(y, (double) i / chords);
        labels.ink(fromX, fromY, toX, toY);
        length += Math.hypot(toX - fromX, toY - fromY);
        fromX = toX;
        fromY = toY;
      }
    }
    return length;
  }

  private static double bezier(double[] p, double s) {
    double r = 1 - s;
    return r * r * (r * p[0] + 3 * s * p[1]) + s * s * (3 * r * p[2] + s * p[3]);
  }
}
