package lodeswing.analysis.gauging;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import lodeswing.core.magnet.Magnet;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * The remanence of a magnet from one or several readings.
 *
 * <p>Each uncertainty is taken as half the width of a 95 % interval. Inputs are shifted by it one
 * after the other, and the changes of the logarithm of the remanence are added in quadrature, up
 * and down apart (JCGM 100:2008, section 5.1). Readings are weighed by the inverse squares of their
 * widths; where they scatter more than that allows, the range is widened by R. T. Birge's ratio
 * (Phys. Rev. 40 (1932) 207). The magnet's size is the same in all of them, so that its uncertainty
 * is carried through the weighed mean as a whole.
 *
 * @param result the remanence with its range
 * @param readings what each reading tells by itself, in their order
 * @param leastOnly whether the result is the least that the magnet can have
 * @param agree whether the readings scatter no more than 95 in 100 such sets do
 */
public record RemanenceEstimate(
    RemanenceRange result, List<RemanenceRange> readings, boolean leastOnly, boolean agree) {

  /** Standard deviations in half a 95 % interval. */
  private static final double COVERAGE = 1.959963984540054;

  private static final double CONFIDENCE = 0.95;

  /** Least width of a reading's range, so that none gets all the weight. */
  private static final double LEAST_WIDTH = 1e-6;

  public RemanenceEstimate {
    readings = List.copyOf(readings);
  }

  /**
   * The estimate. Readings that tell the least remanence only count where there are no others, and
   * are else held against the result.
   *
   * @param sizeOff uncertainty of each of its lengths [m], smaller than the least of them
   * @param readings one or more
   */
  public static RemanenceEstimate of(MagnetSize size, double sizeOff, List<Reading> readings) {
    Magnet unit = size.unit();
    List<Spread> spreads = readings.stream().map(reading -> Spread.of(reading, unit)).toList();
    List<RemanenceRange> alone = new ArrayList<>();
    for (Spread spread : spreads) {
      Spread whole = spread.and(bySize(size, sizeOff, changed -> told(spread.reading, changed)));
      alone.add(whole.range());
    }
    boolean least = readings.stream().allMatch(Reading::leastOnly);
    List<Spread> counted =
        spreads.stream().filter(spread -> least || !spread.reading.leastOnly()).toList();
    double weights = counted.stream().mapToDouble(Spread::weight).sum();
    double mean = counted.stream().mapToDouble(s -> s.weight() * s.log).sum() / weights;
    double down = quadrature(counted.stream().mapToDouble(s -> s.weight() * s.down)) / weights;
    double up = quadrature(counted.stream().mapToDouble(s -> s.weight() * s.up)) / weights;
    double scatter =
        counted.stream()
            .mapToDouble(s -> s.weight() * (s.log - mean) * (s.log - mean) * COVERAGE * COVERAGE)
            .sum();
    int freedom = counted.size() - 1;
    double wider = freedom > 0 ? Math.max(1, Math.sqrt(scatter / freedom)) : 1;
    double[] bySize =
        bySize(
            size,
            sizeOff,
            changed ->
                counted.stream().mapToDouble(s -> s.weight() * told(s.reading, changed)).sum()
                    / weights);
    RemanenceRange result =
        RemanenceRange.about(
            Math.exp(mean), Math.hypot(wider * down, bySize[0]), Math.hypot(wider * up, bySize[1]));
    boolean agree = freedom == 0 || scatter <= quantile(freedom);
    for (int i = 0; i < alone.size(); i++) {
      agree &= !readings.get(i).leastOnly() || alone.get(i).low() <= result.high();
    }
    return new RemanenceEstimate(result, alone, least, agree);
  }

  private static double quantile(int freedom) {
    return new ChiSquaredDistribution(freedom).inverseCumulativeProbability(CONFIDENCE);
  }

  private static double quadrature(DoubleStream parts) {
    return Math.sqrt(parts.map(part -> part * part).sum());
  }

  private static double told(Reading reading, Magnet unit) {
    return Math.log(reading.remanence(unit, new double[reading.inputs()]));
  }

  /** How far down and up a logarithm goes with the magnet's lengths. */
  private static double[] bySize(MagnetSize size, double off, ToDoubleFunction<Magnet> log) {
    double[] reach = new double[2];
    if (off > 0) {
      double middle = log.applyAsDouble(size.unit());
      for (int length = 0; length < size.lengths().size(); length++) {
        double smaller = log.applyAsDouble(size.changed(length, -off).unit()) - middle;
        double larger = log.applyAsDouble(size.changed(length, off).unit()) - middle;
        stretch(reach, smaller, larger);
      }
    }
    return reach;
  }

  private static void stretch(double[] reach, double one, double other) {
    reach[0] = Math.hypot(reach[0], Math.max(0, -Math.min(one, other)));
    reach[1] = Math.hypot(reach[1], Math.max(0, Math.max(one, other)));
  }

  /** What a reading tells by its own inputs: a logarithm, and how far it goes down and up. */
  private record Spread(Reading reading, double log, double down, double up) {

    static Spread of(Reading reading, Magnet unit) {
      double middle = told(reading, unit);
      double[] reach = new double[2];
      for (int input = 0; input < reading.inputs(); input++) {
        double[] shifts = new double[reading.inputs()];
        shifts[input] = -1;
        double one = Math.log(reading.remanence(unit, shifts)) - middle;
        shifts[input] = 1;
        double other = Math.log(reading.remanence(unit, shifts)) - middle;
        stretch(reach, one, other);
      }
      return new Spread(reading, middle, reach[0], reach[1]);
    }

    Spread and(double[] reach) {
      return new Spread(reading, log, Math.hypot(down, reach[0]), Math.hypot(up, reach[1]));
    }

    double weight() {
      double width = Math.max(LEAST_WIDTH, (down + up) / 2);
      return 1 / (width * width);
    }

    RemanenceRange range() {
      return RemanenceRange.about(Math.exp(log), down, up);
    }
  }
}
