package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** Strong magnets in a drawer, in the post and in an aircraft. */
record StorageRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.STORAGE_AND_TRANSPORT;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.hasMagnets();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL, transport(facts));
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    return Map.of(
        SafetyFigure.FIELD_NEAR, facts.packed(NEAR), SafetyFigure.FIELD_FAR, facts.packed(FAR));
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.AIR_FREIGHT_NEAR, SafetyLimit.AIR_FREIGHT_FAR);
  }

  /** Distances at which a package's field is measured [m]. */
  private static final double NEAR = 2.1;

  private static final double FAR = 4.6;

  private static String transport(SafetyFacts facts) {
    if (facts.packed(FAR) > SafetyLimit.AIR_FREIGHT_FAR.value()) {
      return "forbidden";
    }
    return SafetyLimit.AIR_FREIGHT_NEAR.reachedBy(facts.packed(NEAR)) ? "declared" : "plain";
  }
}
