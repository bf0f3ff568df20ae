package lodeswing.safety;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A caution as it is said of one rig, without words.
 *
 * @param code what it is about
 * @param severity how grave it is
 * @param sentences which of its sentences are said, in their order
 * @param brief which of its short lines fits
 * @param figures in SI, in the order of their constants
 * @param limits what they are held against or computed from
 * @param needs JSON Pointers of members of the layout that would tell more
 */
public record SafetyNote(
    SafetyCode code,
    Severity severity,
    List<String> sentences,
    String brief,
    Map<SafetyFigure, Double> figures,
    List<SafetyLimit> limits,
    List<String> needs) {

  /** The name of a sentence or line that is the only one of its kind. */
  static final String USUAL = "usual";

  public SafetyNote {
    sentences = List.copyOf(sentences);
    Map<SafetyFigure, Double> ordered = new EnumMap<>(SafetyFigure.class);
    ordered.putAll(figures);
    figures = Collections.unmodifiableMap(ordered);
    limits = List.copyOf(limits);
    needs = List.copyOf(needs);
  }
}
