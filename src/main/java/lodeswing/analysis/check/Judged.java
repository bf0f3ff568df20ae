package lodeswing.analysis.check;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import lodeswing.analysis.check.Finding.Measure;

/**
 * A measure with what a search for a change needs.
 *
 * @param measure what was found
 * @param margin room to where good begins, negative where it is missed; NaN where it is not known
 * @param ways what may be turned, in the order in which it is tried
 */
record Judged(Measure measure, double margin, List<Way> ways) {

  Judged {
    ways = List.copyOf(ways);
  }

  /**
   * A way to mend a rig.
   *
   * @param knob what is turned
   * @param magnet of which magnet
   * @param direction up (1) or down (-1); 0 for a word
   */
  record Way(Knob knob, int magnet, int direction) {

    static Way up(Knob knob) {
      return new Way(knob, 0, 1);
    }

    static Way down(Knob knob) {
      return new Way(knob, 0, -1);
    }

    static Way word(Knob knob, int magnet) {
      return new Way(knob, magnet, 0);
    }
  }

  static Judged by(Band band, double figure, Cause cause, List<Way> ways, double... details) {
    return new Judged(
        new Measure(
            band.verdict(figure),
            OptionalDouble.of(figure),
            OptionalDouble.of(band.good()),
            cause,
            DoubleStream.of(details).boxed().toList(),
            List.of()),
        band.margin(figure),
        ways);
  }

  static Judged unknown(OptionalDouble figure, Cause cause, List<String> needs, double... details) {
    return new Judged(
        new Measure(
            Verdict.UNKNOWN,
            figure,
            OptionalDouble.empty(),
            cause,
            DoubleStream.of(details).boxed().toList(),
            needs),
        Double.NaN,
        List.of());
  }

  /** The same with another verdict. */
  Judged as(Verdict verdict) {
    return new Judged(
        new Measure(
            verdict,
            measure.figure(),
            measure.limit(),
            measure.cause(),
            measure.details(),
            measure.needs()),
        margin,
        ways);
  }

  boolean good() {
    return measure.verdict() == Verdict.GOOD;
  }
}
