package lodeswing.web.trace;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lodeswing.core.geometry.PathCurve;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;

/**
 * A path as few places as a curve needs: knots of place and velocity with cubics between them,
 * their figures no longer than the distance by which the path may differ.
 *
 * <p>Of that distance eight tenths go to the knots that are left out, a tenth to the rounding of
 * places and a tenth to that of velocities. A place between two knots is a mean of theirs, so it
 * moves by half a decimal in each coordinate at most; a velocity's error e moves it by at most e h
 * / 4 where the knots are h apart, the greatest sum of Hermite's two slope polynomials.
 */
final class SparePath {

  private static final double LEFT_OUT = 0.8;
  private static final double ROUNDED = 0.1;

  /** Half a unit of the last decimal in each of two coordinates. */
  private static final double WORST = Math.sqrt(0.5);

  private final PathCurve curve;
  private final TraceRequest request;
  private final double perPlace;
  private final double perVelocity;

  private SparePath(PathCurve curve, TraceRequest request, double perPlace, double perVelocity) {
    this.curve = curve;
    this.request = request;
    this.perPlace = perPlace;
    this.perVelocity = perVelocity;
  }

  /** Of a path's curve, as far as the request's distance allows; all of it where none is given. */
  static SparePath of(PathCurve whole, TraceRequest request) {
    OptionalDouble thin = request.thin();
    if (thin.isEmpty() || thin.getAsDouble() == 0) {
      return new SparePath(whole, request, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    PathCurve curve = snapped(whole).thinned(LEFT_OUT * thin.getAsDouble() * request.unit());
    double longest = Double.MIN_NORMAL;
    for (int i = 1; i < curve.count(); i++) {
      longest = Math.max(longest, curve.t(i) - curve.t(i - 1));
    }
    double distance = ROUNDED * thin.getAsDouble();
    return new SparePath(curve, request, decimals(distance), decimals(distance * 4 / longest));
  }

  /** The same curve with its knots at short times: a decimal that is well below their distance. */
  private static PathCurve snapped(PathCurve whole) {
    int last = whole.count() - 1;
    double mean = (whole.t(last) - whole.t(0)) / Math.max(1, last);
    double perTime = Math.pow(10, Math.ceil(Math.log10(8 / mean)));
    double[] times =
        IntStream.rangeClosed(0, last)
            .mapToDouble(
                i -> i == 0 || i == last ? whole.t(i) : Math.rint(whole.t(i) * perTime) / perTime)
            .filter(time -> time >= whole.t(0) && time <= whole.ends())
            .distinct()
            .sorted()
            .toArray();
    double[][] columns = new double[4][times.length];
    double[] state = new double[4];
    for (int i = 0; i < times.length; i++) {
      whole.at(times[i], state);
      for (int column = 0; column < state.length; column++) {
        columns[column][i] = state[column];
      }
    }
    return new PathCurve(times, columns);
  }

  /** The least power of ten whose rounding moves a place by no more than a distance. */
  private static double decimals(double distance) {
    return Math.pow(10, Math.ceil(Math.log10(WORST / distance)));
  }

  /** As columns. */
  Body columns() {
    Map<String, Object> members = new LinkedHashMap<>();
    List<String> names = List.of("t", "x", "y", "vx", "vy");
    for (int column = 0; column < names.size(); column++) {
      int at = column;
      members.put(
          names.get(at), IntStream.range(0, curve.count()).mapToObj(i -> value(i, at)).toList());
    }
    return Body.of(members);
  }

  /** As rows of a table, in the same order; the last column, of energies, stays empty. */
  void write(CsvWriter csv) throws IOException {
    for (int i = 0; i < curve.count(); i++) {
      for (int column = 0; column < 5; column++) {
        csv.number(value(i, column));
      }
      csv.empty();
      csv.endRow();
    }
  }

  private double value(int i, int column) {
    return switch (column) {
      case 0 -> TraceAnswers.time(curve.t(i));
      case 1 -> rounded(curve.x(i), perPlace);
      case 2 -> rounded(curve.y(i), perPlace);
      case 3 -> rounded(curve.vx(i), perVelocity);
      default -> rounded(curve.vy(i), perVelocity);
    };
  }

  /** The sum turns -0 into 0. */
  private double rounded(double value, double perUnit) {
    double shown = request.layout().shown(value);
    return Double.isInfinite(perUnit) ? shown : Math.rint(shown * perUnit) / perUnit + 0.0;
  }
}
