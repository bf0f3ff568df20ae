package lodeswing.web.freeswing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.analysis.freeswing.RatioDesign;
import lodeswing.analysis.freeswing.WholeRatio;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import lodeswing.core.swing.SmallSwings;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A suspension that gives a wanted ratio, as a whole layout that was checked like any other.
 *
 * @param design what was found
 * @param layout the layout with it, its lengths to a micrometre
 * @param whole the same with its lengths to a millimetre
 */
record BuiltDesign(RatioDesign design, LayoutDocument layout, SmallSwings whole) {

  private static final double MICROMETRES = 1e6;
  private static final double MILLIMETRES = 1e3;

  /**
   * All designs for a ratio.
   *
   * @param keep words of what is to stay as it is; empty for all
   * @throws ProblemException {@code unreachable-ratio}, saying what can be reached
   */
  static List<BuiltDesign> of(LayoutDocument document, WholeRatio ratio, List<String> keep) {
    if (!(document.layout() instanceof BenchLayout bench)) {
      throw unreachable(
          "A textbook layout has one frequency for every direction, so that its ratio is always"
              + " 1:1.",
          "cannot be chosen in a textbook layout");
    }
    List<BuiltDesign> built = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (RatioDesign design : RatioDesign.of(bench.suspension(), ratio)) {
      if (keep.isEmpty() || keep.contains(design.keeps().word())) {
        try {
          built.add(build(document, design));
        } catch (ProblemException e) {
          e.faults().forEach(fault -> reasons.add(fault.pointer() + " " + fault.detail()));
        }
      }
    }
    if (built.isEmpty()) {
      throw unreachable(
          "This rig cannot swing " + ratio.y() + " times along y to " + ratio.x() + " along x.",
          reasons.isEmpty()
              ? reachable(bench.suspension(), ratio, keep)
              : "would need lengths that cannot be: " + String.join("; ", reasons));
    }
    return built;
  }

  private static BuiltDesign build(LayoutDocument document, RatioDesign design) {
    LayoutDocument exact = with(document, rounded(design.suspension(), MICROMETRES));
    BenchLayout rig = (BenchLayout) exact.layout();
    BenchLayout whole =
        new BenchLayout(
            rounded(design.suspension(), MILLIMETRES),
            rig.bob(),
            rig.gap(),
            rig.magnets(),
            rig.backing(),
            rig.gravity(),
            rig.loss());
    return new BuiltDesign(design, exact, SmallSwings.of(whole));
  }

  private static double rounded(double metres, double perMetre) {
    return Math.max(1, Math.rint(metres * perMetre)) / perMetre;
  }

  private static Suspension rounded(Suspension suspension, double perMetre) {
    if (suspension instanceof Yoke yoke) {
      return new Yoke(
          rounded(yoke.span(), perMetre),
          rounded(yoke.drop(), perMetre),
          rounded(yoke.leg(), perMetre),
          yoke.bobMass());
    }
    HookedBar bar = (HookedBar) suspension;
    return new HookedBar(
        Math.rint(bar.hookOffset() * perMetre) / perMetre, bar.parts(), bar.bobArm());
  }

  /** The layout on another suspension. */
  private static LayoutDocument with(LayoutDocument document, Suspension suspension) {
    Body pendulum = document.canonical().object("pendulum");
    Body hung;
    if (suspension instanceof Yoke yoke) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("kind", "yoke");
      members.put("yokeSpanMm", millimetres(yoke.span()));
      members.put("yokeDropMm", millimetres(yoke.drop()));
      members.put("legMm", millimetres(yoke.leg()));
      members.put("bobMassG", pendulum.number("bobMassG"));
      hung = Body.of(members);
    } else {
      hung = pendulum.with("hookOffsetMm", millimetres(((HookedBar) suspension).hookOffset()));
    }
    return LayoutDocument.ofCanonical(
        document.canonical().with("pendulum", hung).toJson().getBytes(StandardCharsets.UTF_8));
  }

  /** Millimetres to a micrometre. */
  static double millimetres(double metres) {
    return Math.rint(metres * MICROMETRES) / MILLIMETRES;
  }

  private static String reachable(Suspension suspension, WholeRatio ratio, List<String> keep) {
    if (suspension instanceof HookedBar bar) {
      double most = ratioAt(bar, RatioDesign.quickestOffset(bar));
      return keep.isEmpty() || keep.contains(RatioDesign.Keeps.BAR.word())
          ? String.format(
              Locale.ROOT,
              "lies beyond what a hook gives this bar: at most %.4f swings along y to one along x",
              most)
          : "is sought for a bar, of which only the hook can be changed: leave keep out";
    }
    if (suspension instanceof Cord && !keep.isEmpty()) {
      return "is sought for a single cord, of which only the height can be kept: leave keep out";
    }
    if (ratio.equals(new WholeRatio(1, 1))) {
      return "is what a single cord has; a Y cord never has it";
    }
    return keep.contains(RatioDesign.Keeps.BAR.word())
        ? "is sought for a cord, which has no bar to keep: leave keep out"
        : "must be below 1:1: a Y cord swings more slowly along y, across its supports, than along"
            + " x; ask for the ratio the other way round";
  }

  private static double ratioAt(HookedBar bar, double offset) {
    var body = new HookedBar(offset, bar.parts(), bar.bobArm()).body();
    return body.rateY(1) / body.rateX(1);
  }

  private static ProblemException unreachable(String what, String detail) {
    return new ProblemException(
        ProblemCode.UNREACHABLE_RATIO, what, List.of(new Fault("?ratio", detail)));
  }
}
