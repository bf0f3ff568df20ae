package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a check.
 *
 * @param code which line
 * @param measure what was found
 * @param change the smallest change that makes it good; empty where it is good or none was found
 */
public record Finding(CheckCode code, Measure measure, Optional<Change> change) {

  /**
   * What a line found on a rig.
   *
   * @param verdict what it comes to
   * @param figure measured, in SI; not always there where the verdict is unknown
   * @param limit where good begins, in SI
   * @param cause the sentence that tells it
   * @param details the sentence's further figures, in SI, as the cause lists them
   * @param needs pointers of the members that would make it known
   */
  public record Measure(
      Verdict verdict,
      OptionalDouble figure,
      OptionalDouble limit,
      Cause cause,
      List<Double> details,
      List<String> needs) {

    public Measure {
      details = List.copyOf(details);
      needs = List.copyOf(needs);
    }
  }
}
