package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** A laser that marks the path or the place; its class is not known here. */
record LaserRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.LASER;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.rig().laser().orElse(false);
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
    return Map.of();
  }
}
