package lodeswing.core.field;

import static lodeswing.core.field.FieldSlots.POINTS;

import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.PlacedSource;

/** A source of field as a block of points meets it. */
sealed interface FieldSource {

  /** Adds its flux density at a block's points, which lie in a box. */
  void add(FieldLanes lanes, PointBox box);

  /**
   * Adds its flux density at a single point.
   *
   * @param b receives the sum, x, y, z [T]
   * @param work three numbers to work with
   */
  void addAt(double px, double py, double pz, double[] b, double[] work);

  /**
   * A disc.
   *
   * @param factor its remanence [T], negative where its south pole is up or where it is a hole
   * @param unit the same disc with a remanence of 1 T, for single points near it
   */
  record Round(
      double x,
      double y,
      double z,
      double radius,
      double half,
      double factor,
      DiscSeries series,
      Disc unit)
      implements FieldSource {

    /** Least complementary moduli for which so many means do, see {@link #means}. */
    private static final double[] ENOUGH = enough();

    private static final int MOST_MEANS = 14;

    /** The box rounds otherwise than the points do. */
    private static final double SLACK = 1e-12;

    /** A mean takes k to 2 sqrt(k)/(1 + k); backwards from where one more is the last. */
    private static double[] enough() {
      double[] enough = new double[MOST_MEANS];
      double k = 1 - 1e-8;
      for (int n = 1; n < enough.length; n++) {
        enough[n] = k;
        double rest = Math.sqrt((1 - k) * (1 + k));
        double last = k / (1 + rest);
        k = last * last;
      }
      return enough;
    }

    @Override
    public void add(FieldLanes lanes, PointBox box) {
      double squared = radius * radius + half * half;
      double border = DiscSeries.FAR * DiscSeries.FAR * squared;
      double leastAcross = box.leastAcross(x, y);
      double mostAcross = box.mostAcross(x, y);
      double nearest = leastAcross * leastAcross + box.leastAlong(z) * box.leastAlong(z);
      double farthest = mostAcross * mostAcross + box.mostAlong(z) * box.mostAlong(z);
      lanes.locate(x, y, z);
      if (nearest * (1 - SLACK) <= border) {
        addNear(lanes, box, border);
      }
      if (farthest * (1 + SLACK) > border) {
        lanes.beginFar(squared);
        for (int term = DiscSeries.terms(squared / Math.max(nearest, border)); term > 0; term--) {
          lanes.takeTerm(series, term);
        }
        lanes.addFar(factor, border);
      }
    }

    @Override
    public void addAt(double px, double py, double pz, double[] b, double[] work) {
      double dx = px - x;
      double dy = py - y;
      double dz = pz - z;
      double r2 = dx * dx + dy * dy + dz * dz;
      double squared = radius * radius + half * half;
      if (r2 > DiscSeries.FAR * DiscSeries.FAR * squared) {
        series.addAt(dx, dy, dz, r2, squared, factor, b);
        return;
      }
      unit.field(dx, dy, dz, work);
      for (int i = 0; i < 3; i++) {
        b[i] += factor * work[i];
      }
    }

    private void addNear(FieldLanes lanes, PointBox box, double border) {
      addFace(lanes, FieldSlots.UPPER, half, box);
      addFace(lanes, FieldSlots.LOWER, -half, box);
      lanes.addNear(radius, factor / 2, border);
    }

    private void addFace(FieldLanes lanes, int face, double shift, PointBox box) {
      lanes.beginFace(face, radius, shift);
      for (int n = means(box, shift); n > 0; n--) {
        lanes.takeMean(face);
      }
      lanes.endFace(face);
    }

    /** How many means the worst place in a box may need. */
    private int means(PointBox box, double shift) {
      double in = box.leastAcross(x, y);
      double out = box.mostAcross(x, y);
      double edge = Math.max(0, Math.max(in - radius, radius - out));
      double low = box.leastAlong(z - shift);
      double high = box.mostAlong(z - shift);
      double least = Math.hypot(edge, low) / Math.hypot(radius + out, high);
      int n = 1;
      while (n < MOST_MEANS - 1 && least < ENOUGH[n]) {
        n++;
      }
      return n;
    }
  }

  /**
   * A dipole, or a sphere.
   *
   * @param strength mu0 m/(4 pi), signed [T m^3]
   * @param radius of the sphere, 0 for a dipole [m]
   * @param inside flux density within it [T]
   */
  record Point(double x, double y, double z, double strength, double radius, double inside)
      implements FieldSource {

    @Override
    public void add(FieldLanes lanes, PointBox box) {
      lanes.locate(x, y, z);
      lanes.addDipole(strength, radius * radius, inside);
    }

    @Override
    public void addAt(double px, double py, double pz, double[] b, double[] work) {
      double dx = px - x;
      double dy = py - y;
      double dz = pz - z;
      double r2 = dx * dx + dy * dy + dz * dz;
      if (r2 < radius * radius) {
        b[2] += inside;
        return;
      }
      double w = strength / (r2 * Math.sqrt(r2));
      double along = 3 * dz / r2 * w;
      b[0] += along * dx;
      b[1] += along * dy;
      b[2] += along * dz - w;
    }
  }

  /** A source whose formula has logarithms and angles, one point after the other. */
  record Plain(PlacedSource source) implements FieldSource {

    @Override
    public void add(FieldLanes lanes, PointBox box) {
      double[] s = lanes.slots();
      double[] b = new double[3];
      for (int i = 0; i < POINTS; i++) {
        source.field(s[FieldSlots.X + i], s[FieldSlots.Y + i], s[FieldSlots.Z + i], b);
        s[FieldSlots.BX + i] += b[0];
        s[FieldSlots.BY + i] += b[1];
        s[FieldSlots.BZ + i] += b[2];
      }
    }

    @Override
    public void addAt(double px, double py, double pz, double[] b, double[] work) {
      source.field(px, py, pz, work);
      for (int i = 0; i < 3; i++) {
        b[i] += work[i];
      }
    }
  }
}
