package lodeswing.safety;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Magnets that are small parts, and how strongly they would draw each other in a body. */
record SwallowingRule() implements SafetyRule {

  /** Age below which a thing to play and learn with is a toy (SOR/2011-17, section 1) [years]. */
  private static final double GROWN = 14;

  @Override
  public SafetyCode code() {
    return SafetyCode.SWALLOWING;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.hasMagnets();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return facts.overFluxIndex() > 0
        ? Severity.DANGER
        : facts.smallParts() > 0 || facts.sized().isEmpty() ? Severity.WARNING : Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    List<String> sentences = new ArrayList<>(List.of(brief(facts)));
    boolean child = facts.rig().youngest().orElse(GROWN) < GROWN;
    if (child && facts.overFluxIndex() > 0) {
      sentences.add("child");
    }
    sentences.addAll(List.of("advice", "swallowed"));
    return sentences;
  }

  @Override
  public List<String> needs(SafetyFacts facts) {
    return facts.rig().youngest().isPresent() ? List.of() : List.of("/audience/ageFrom");
  }

  @Override
  public String brief(SafetyFacts facts) {
    if (facts.sized().isEmpty()) {
      return "unknown";
    }
    return facts.overFluxIndex() > 0 ? "over" : facts.smallParts() > 0 ? "below" : "large";
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    Map<SafetyFigure, Double> figures = new EnumMap<>(SafetyFigure.class);
    figures.put(SafetyFigure.MAGNETS, (double) facts.magnets());
    if (facts.sized().isEmpty()) {
      return figures;
    }
    int counted = facts.overFluxIndex() > 0 ? facts.overFluxIndex() : facts.smallParts();
    figures.put(SafetyFigure.SMALL_PARTS, (double) counted);
    facts
        .gravest()
        .flatMap(SafetyFacts.KindFacts::index)
        .ifPresent(
            index -> {
              figures.put(SafetyFigure.FLUX_INDEX, index.value());
              figures.put(SafetyFigure.PROBE_READING, index.reading());
              figures.put(SafetyFigure.POLE_AREA, index.area());
            });
    return figures;
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.FLUX_INDEX);
  }
}
