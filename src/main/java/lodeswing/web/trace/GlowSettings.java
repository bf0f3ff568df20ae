package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.glow.DecayLaw;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * How a long exposure is made, in the layout's own units.
 *
 * @param spot width of the spot of light at half its brightness [mm on the bench]
 * @param pixelSize side of a pixel [mm on the bench]; empty for what suits
 * @param exposureS how long the light is on
 * @param lookAfterS how long after that the paper is looked at
 * @param decay how the paper fades
 * @param gain how many times as bright it is shown
 */
record GlowSettings(
    double spot,
    Optional<Double> pixelSize,
    double exposureS,
    double lookAfterS,
    DecayLaw decay,
    double gain) {

  static final NumberShape SPOT_RANGE = NumberShape.between(0.001, 1_000);
  static final NumberShape PIXEL_RANGE = NumberShape.between(0.0001, 100);
  static final NumberShape EXPOSURE_RANGE = NumberShape.above(0, 1e6);
  static final NumberShape LOOK_RANGE = NumberShape.between(0, 1e6);
  static final NumberShape DECAY_RANGE = NumberShape.between(0.1, 1e5);
  static final NumberShape EXPONENT_RANGE = NumberShape.between(0.1, 10);
  static final NumberShape GAIN_RANGE = NumberShape.between(0.01, 100);

  private static final Parameter<Double> SPOT = number("spot", SPOT_RANGE);
  private static final Parameter<Double> PIXEL = number("pixelSize", PIXEL_RANGE);
  private static final Parameter<Double> EXPOSURE =
      Parameter.number("exposureS", Double.MIN_NORMAL, EXPOSURE_RANGE.most());
  private static final Parameter<Double> LOOK = number("lookAfterS", LOOK_RANGE).orElse(0.0);
  private static final Parameter<Double> DECAY =
      number("decayTimeS", DECAY_RANGE).orElse(DecayLaw.STRONTIUM_ALUMINATE.time());
  private static final Parameter<Double> EXPONENT =
      number("decayExponent", EXPONENT_RANGE).orElse(DecayLaw.STRONTIUM_ALUMINATE.exponent());
  private static final Parameter<Double> GAIN = number("gain", GAIN_RANGE).orElse(1.0);

  /** Spots where the query is silent: a small lamp, and a like share of a textbook's reach. */
  private static final double BENCH_SPOT = 4;

  private static final double TEXTBOOK_SPOT = 0.05;

  /** Pixels along the longer side of a picture at least, where its spot allows. */
  private static final double USUAL_SIDE = 480;

  /** Pixels to a spot, at least and at most. */
  private static final double FEWEST = 2;

  private static final double MOST = 80;

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  /** The parameters of a query. */
  static Parameter<?>[] parameters() {
    return new Parameter<?>[] {SPOT, PIXEL, EXPOSURE, LOOK, DECAY, EXPONENT, GAIN};
  }

  /**
   * Reads a query for a trace.
   *
   * @throws ProblemException {@code invalid-request} where figures do not suit each other
   */
  static GlowSettings of(QueryParameters query, TraceRequest trace) {
    double spot = query.find(SPOT).orElse(trace.bench() ? BENCH_SPOT : TEXTBOOK_SPOT);
    double exposure = query.find(EXPOSURE).orElse(trace.durationS());
    Optional<Double> pixel = query.find(PIXEL);
    List<Fault> faults = new ArrayList<>();
    if (exposure > trace.durationS()) {
      faults.add(
          new Fault(
              "?exposureS",
              "is "
                  + Numbers.shortest(exposure)
                  + "; the trace has "
                  + Numbers.shortest(trace.durationS())
                  + " s: give that at most, or ask for a trace with a longer durationS"));
    }
    pixel
        .filter(side -> side > spot / FEWEST || side < spot / MOST)
        .ifPresent(side -> faults.add(unsuited(side, spot)));
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "The figures of the exposure do not suit.", faults);
    }
    return new GlowSettings(
        spot,
        pixel,
        exposure,
        query.get(LOOK),
        new DecayLaw(query.get(DECAY), query.get(EXPONENT)),
        query.get(GAIN));
  }

  private static Fault unsuited(double side, double spot) {
    return new Fault(
        "?pixelSize",
        "is "
            + Numbers.shortest(side)
            + "; for a spot of "
            + Numbers.shortest(spot)
            + " give a number from "
            + Numbers.shortest(spot / MOST)
            + " to "
            + Numbers.shortest(spot / FEWEST));
  }

  /**
   * The side of a pixel for a picture.
   *
   * @param longest side of the picture, in the layout's unit of length
   */
  double pixelFor(double longest) {
    return pixelSize.orElseGet(
        () -> {
          double usual = Math.min(atMost(longest / USUAL_SIDE), atMost(spot / FEWEST));
          return Math.max(usual, spot / MOST);
        });
  }

  /** The greatest of 1, 2, 2.5 and 5 times powers of ten that is no longer. */
  private static double atMost(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(most) + 1e-12));
    double lead = most / power * (1 + 1e-12);
    double round = lead >= 5 ? 5 : lead >= 2.5 ? 2.5 : lead >= 2 ? 2 : 1;
    return Math.rint(round * power * 1e9) / 1e9;
  }
}
