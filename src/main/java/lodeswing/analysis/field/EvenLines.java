package lodeswing.analysis.field;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import lodeswing.core.field.Frame;
import lodeswing.core.field.LineStepper;
import lodeswing.core.field.PlaneField;

/**
 * Lines along a plane field, evenly apart: each new line begins beside a line that is there, at the
 * wanted distance, and goes on until it comes nearer to another than {@value #NEAREST} of that.
 *
 * <p>Source: B. Jobard and W. Lefer, Creating evenly-spaced streamlines of arbitrary density,
 * Visualization in Scientific Computing '97 (1997) 43: seeds, test distance and cells of points are
 * theirs. In addition lines that close upon themselves are closed, and parts of the window that no
 * seed reaches are begun from a coarse grid.
 */
public final class EvenLines {

  /** Share of the distance to which a line may come near another. */
  static final double NEAREST = 0.55;

  private static final int STEPS_PER_DISTANCE = 4;
  private static final double SHORTEST = 1.5;
  private static final int LONGEST = 4_000;
  private static final double ALMOST = 1 - 1e-9;

  /** Cosine of the angle within which a seed lies ahead. */
  private static final double HOMEWARD = 0.9;

  private final PlaneField field;
  private final Frame window;
  private final double apart;
  private final double weakest;
  private final DoubleConsumer progress;
  private final NearPoints points;
  private final List<FieldLine> lines = new ArrayList<>();
  private final ArrayDeque<FieldLine> waiting = new ArrayDeque<>();

  /**
   * Lines that are not drawn yet.
   *
   * @param field what they follow
   * @param window in which they lie
   * @param apart wanted distance [m]
   * @param weakest field that still has a direction [T]
   * @param progress told the share of the window that is done; may throw to end the work
   */
  public EvenLines(
      PlaneField field, Frame window, double apart, double weakest, DoubleConsumer progress) {
    this.field = field;
    this.window = window;
    this.apart = apart;
    this.weakest = weakest;
    this.progress = progress;
    this.points = new NearPoints(window, apart);
  }

  /**
   * All lines, in the order in which they were drawn.
   *
   * @param u first coordinates of where to begin, tried in this order
   * @param v second coordinates
   */
  public List<FieldLine> run(double[] u, double[] v) {
    for (int i = 0; i < u.length; i++) {
      begin(u[i], v[i]);
      followAll();
    }
    int columns = (int) Math.ceil(window.width() / apart);
    int rows = (int) Math.ceil(window.height() / apart);
    for (int row = 0; row < rows; row++) {
      progress.accept((double) row / rows);
      for (int column = 0; column < columns; column++) {
        begin(
            window.left() + (column + 0.5) * window.width() / columns,
            window.bottom() + (row + 0.5) * window.height() / rows);
        followAll();
      }
    }
    return List.copyOf(lines);
  }

  private void followAll() {
    while (!waiting.isEmpty()) {
      FieldLine line = waiting.remove();
      progress.accept(Math.min(1, points.count() * apart * apart / STEPS_PER_DISTANCE / area()));
      for (int i = 1; i < line.count() - 1; i++) {
        double du = line.u(i + 1) - line.u(i - 1);
        double dv = line.v(i + 1) - line.v(i - 1);
        double length = Math.hypot(du, dv);
        if (length > 0) {
          double nu = -dv / length * apart;
          double nv = du / length * apart;
          begin(line.u(i) + nu, line.v(i) + nv);
          begin(line.u(i) - nu, line.v(i) - nv);
        }
      }
    }
  }

  private double area() {
    return window.width() * window.height();
  }

  private void begin(double u, double v) {
    if (window.holds(u, v) && !points.anyWithin(u, v, ALMOST * apart)) {
      grown(u, v)
          .ifPresent(
              line -> {
                for (int i = 0; i < line.count(); i++) {
                  points.add(line.u(i), line.v(i));
                }
                lines.add(line);
                waiting.add(line);
              });
    }
  }

  private Optional<FieldLine> grown(double u, double v) {
    Half ahead = new Half(u, v);
    boolean closed = ahead.follow(true, null);
    Half behind = new Half(u, v);
    if (!closed) {
      behind.follow(false, ahead);
    }
    int count = ahead.count + behind.count - 1;
    if (ahead.count + behind.count < 2 || count < 2) {
      return Optional.empty();
    }
    double[] us = new double[count];
    double[] vs = new double[count];
    double[] strengths = new double[count];
    for (int i = 0; i < count; i++) {
      int k = i - behind.count + 1;
      Half half = k < 0 ? behind : ahead;
      us[i] = half.u[Math.abs(k)];
      vs[i] = half.v[Math.abs(k)];
      strengths[i] = half.strength[Math.abs(k)];
    }
    FieldLine line = new FieldLine(us, vs, strengths, closed);
    return line.length() >= SHORTEST * apart ? Optional.of(line) : Optional.empty();
  }

  /** One half of a line, from its seed on. */
  private final class Half {
    private final double[] u = new double[LONGEST];
    private final double[] v = new double[LONGEST];
    private final double[] strength = new double[LONGEST];
    private final double[] gone = new double[LONGEST];
    private int count;

    Half(double u, double v) {
      this.u[0] = u;
      this.v[0] = v;
      double[] f = new double[2];
      field.at(u, v, f);
      strength[0] = Math.hypot(f[0], f[1]);
      count = 1;
    }

    /** Follows the field; true where the line came back to its seed. */
    boolean follow(boolean forwards, @org.jspecify.annotations.Nullable Half other) {
      double step = apart / STEPS_PER_DISTANCE;
      LineStepper stepper = new LineStepper(field, u[0], v[0], step, forwards, weakest);
      double last = 0;
      while (count < LONGEST - 1 && stepper.step()) {
        double pu = stepper.u();
        double pv = stepper.v();
        last += Math.hypot(pu - u[count - 1], pv - v[count - 1]);
        if (!window.holds(pu, pv)) {
          addEdge(pu, pv, stepper.strength());
          return false;
        }
        if (last > 3 * apart && comesHome(stepper)) {
          add(pu, pv, stepper.strength(), last);
          add(u[0], v[0], strength[0], last);
          return true;
        }
        if (points.anyWithin(pu, pv, NEAREST * apart) || meetsItself(pu, pv, last, other)) {
          return false;
        }
        add(pu, pv, stepper.strength(), last);
      }
      return false;
    }

    /** Whether the seed lies close ahead. */
    private boolean comesHome(LineStepper stepper) {
      double du = u[0] - stepper.u();
      double dv = v[0] - stepper.v();
      double distance = Math.hypot(du, dv);
      return distance < NEAREST * apart
          && du * stepper.du() + dv * stepper.dv() > HOMEWARD * distance;
    }

    private boolean meetsItself(
        double pu, double pv, double last, @org.jspecify.annotations.Nullable Half other) {
      for (int i = 0; i < count; i++) {
        if (last - gone[i] > 2 * apart && near(pu, pv, u[i], v[i])) {
          return true;
        }
      }
      for (int i = 0; other != null && i < other.count; i++) {
        if (last + other.gone[i] > 2 * apart && near(pu, pv, other.u[i], other.v[i])) {
          return true;
        }
      }
      return false;
    }

    private boolean near(double au, double av, double bu, double bv) {
      double du = au - bu;
      double dv = av - bv;
      return du * du + dv * dv < NEAREST * apart * NEAREST * apart;
    }

    private void add(double pu, double pv, double force, double way) {
      u[count] = pu;
      v[count] = pv;
      strength[count] = force;
      gone[count] = way;
      count++;
    }

    /** Ends on the window's edge, where the way to a place outside meets it. */
    private void addEdge(double pu, double pv, double force) {
      double fromU = u[count - 1];
      double fromV = v[count - 1];
      double share =
          Math.min(
              share(fromU, pu, window.left(), window.left() + window.width()),
              share(fromV, pv, window.bottom(), window.bottom() + window.height()));
      if (share > 0) {
        add(
            inside(fromU + share * (pu - fromU), window.left(), window.width()),
            inside(fromV + share * (pv - fromV), window.bottom(), window.height()),
            force,
            gone[count - 1]);
      }
    }

    private static double share(double from, double to, double low, double high) {
      return to > high ? (high - from) / (to - from) : to < low ? (low - from) / (to - from) : 1;
    }

    private static double inside(double at, double low, double extent) {
      return Math.max(low, Math.min(low + extent, at));
    }
  }
}
