package lodeswing.web.trace;

import java.util.List;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * How a path is played.
 *
 * @param speed how many times as fast as it is
 * @param width of a GIF [px]
 */
record AnimationSettings(double speed, int width) {

  static final NumberShape SPEED_RANGE = NumberShape.between(0.05, 1_000);
  static final NumberShape WIDTH_RANGE = NumberShape.count(200, 1_200);

  private static final Parameter<Double> SPEED =
      Parameter.number("speed", SPEED_RANGE.least(), SPEED_RANGE.most());
  private static final Parameter<Integer> WIDTH =
      Parameter.integer("pixels", (int) WIDTH_RANGE.least(), (int) WIDTH_RANGE.most()).orElse(640);

  /** Speeds that are chosen where the query is silent, the first that does. */
  private static final List<Double> USUAL =
      List.of(1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1_000.0);

  /** The parameters of a query. */
  static Parameter<?>[] parameters() {
    return new Parameter<?>[] {SPEED, WIDTH};
  }

  /**
   * Reads a query for a trace.
   *
   * @throws ProblemException {@code too-costly} where it would play too long
   */
  static AnimationSettings of(QueryParameters query, TraceRequest trace, Limits limits) {
    double least = trace.durationS() / limits.animationS();
    double usual = USUAL.stream().filter(speed -> speed >= least).findFirst().orElse(least);
    double speed = query.find(SPEED).orElse(usual);
    if (speed < least) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The animation would play longer than one may.",
          List.of(
              new Fault(
                  "?speed",
                  "of "
                      + Numbers.shortest(speed)
                      + " makes a play of "
                      + Numbers.shortest(Math.rint(10 * trace.durationS() / speed) / 10)
                      + " s, of at most "
                      + limits.animationS()
                      + "; raise it to "
                      + Numbers.shortest(Math.ceil(least * 1_000) / 1_000))));
    }
    return new AnimationSettings(speed, query.get(WIDTH));
  }

  /** The speed in words. */
  String words() {
    return speed == 1 ? "at true speed" : "at " + Numbers.shortest(speed) + " times its true speed";
  }
}
