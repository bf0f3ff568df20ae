package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** Magnets are brittle as china: what snaps together splinters. */
record SplinterRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.SPLINTERS;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.grip().isPresent();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return facts.pinch() >= SafetyLimit.FINGERS.value() ? Severity.WARNING : Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL);
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    return Map.of(SafetyFigure.GRIP, facts.pinch());
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.FINGERS);
  }
}
