package lodeswing.safety;

import java.util.List;
import java.util.Map;

/**
 * One caution: when it is said, how grave it is, in which sentences, with which figures and limits.
 * Its texts (title, sentences, rule, source and what it does not cover) are kept by language under
 * its code.
 */
interface SafetyRule {

  /** What it is about. */
  SafetyCode code();

  /** Whether it is said of a rig. */
  boolean applies(SafetyFacts facts);

  /** How grave it is there. */
  Severity severity(SafetyFacts facts);

  /** Which of its sentences are said, in their order. */
  List<String> sentences(SafetyFacts facts);

  /** Which of its short lines fits. */
  default String brief(SafetyFacts facts) {
    return SafetyNote.USUAL;
  }

  /** Its figures in SI. */
  Map<SafetyFigure, Double> figures(SafetyFacts facts);

  /** What its figures are held against or computed from. */
  default List<SafetyLimit> limits() {
    return List.of();
  }

  /** JSON Pointers of members of the layout that would tell more. */
  default List<String> needs(SafetyFacts facts) {
    return List.of();
  }

  /** What is said of a rig. */
  default SafetyNote note(SafetyFacts facts) {
    return new SafetyNote(
        code(),
        severity(facts),
        sentences(facts),
        brief(facts),
        figures(facts),
        limits(),
        needs(facts));
  }
}
