package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** Iron filings: in eyes, in lungs, and on magnets. */
record FilingsRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.FILINGS;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.rig().filings().orElse(false);
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL);
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    return Map.of();
  }
}
