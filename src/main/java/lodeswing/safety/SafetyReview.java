package lodeswing.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lodeswing.core.rig.BenchLayout;

/**
 * All cautions for a rig.
 *
 * @param notes what is said, in the order of the codes
 * @param magnets figures of each kind of magnet, the bob's first
 * @param needs JSON Pointers of members of the layout that would bring more cautions
 */
public record SafetyReview(List<SafetyNote> notes, List<MagnetSafety> magnets, List<String> needs) {

  private static final List<SafetyRule> RULES =
      List.of(
          new SwallowingRule(),
          new PinchingRule(),
          new SplinterRule(),
          new ImplantRule(),
          new CardRule(),
          new SwingRule(),
          new SupportRule(),
          new FixingRule(),
          new LaserRule(),
          new FilingsRule(),
          new StorageRule());

  public SafetyReview {
    notes = List.copyOf(notes);
    magnets = List.copyOf(magnets);
    needs = List.copyOf(needs);
  }

  /** Reviews a rig; of a textbook layout it says that nothing is known of real magnets. */
  public static SafetyReview of(SafetyRig rig) {
    if (!(rig.layout() instanceof BenchLayout bench)) {
      var unknown =
          new SafetyNote(
              SafetyCode.NO_RIG,
              Severity.NOTE,
              List.of(SafetyNote.USUAL),
              SafetyNote.USUAL,
              Map.of(),
              List.of(),
              List.of());
      return new SafetyReview(List.of(unknown), List.of(), List.of());
    }
    var facts = new SafetyFacts(rig, bench);
    return new SafetyReview(
        RULES.stream().filter(rule -> rule.applies(facts)).map(rule -> rule.note(facts)).toList(),
        facts.kinds().stream().map(SafetyReview::figures).toList(),
        needs(rig));
  }

  private static List<String> needs(SafetyRig rig) {
    List<String> needs = new ArrayList<>();
    if (rig.laser().isEmpty()) {
      needs.add("/audience/laser");
    }
    if (rig.filings().isEmpty()) {
      needs.add("/audience/filings");
    }
    return needs;
  }

  private static MagnetSafety figures(SafetyFacts.KindFacts facts) {
    return new MagnetSafety(
        facts.kind(),
        facts.index(),
        facts.smallPart(),
        facts.overFluxIndex(),
        facts.reach(SafetyLimit.IMPLANTS),
        facts.pinch());
  }
}
