package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** What carries the pendulum, and what it should be tried with. */
record SupportRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.SUPPORT;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return true;
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.WARNING;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL);
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    double load = facts.load();
    return Map.of(
        SafetyFigure.WEIGHT,
        facts.weight(),
        SafetyFigure.LOAD,
        load,
        SafetyFigure.TEST_LOAD,
        SafetyFacts.MARGIN * load);
  }
}
