package lodeswing.web.fit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * What the shapes of a request for a fit cannot see: whether its names are known and begin
 * somewhere.
 */
final class FitReview {

  private FitReview() {}

  /**
   * Checks a body that {@link FitShapes#REQUEST} has read.
   *
   * @throws ProblemException {@code invalid-request} with every fault
   */
  static void check(LayoutDocument layout, Body sent) {
    var faults = new FaultList();
    List<String> unknown = sent.texts("unknown");
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < unknown.size(); i++) {
      String name = unknown.get(i);
      String pointer = "/unknown/" + i;
      if (!seen.add(name)) {
        faults.add(pointer, name + " is there already; name it once");
      } else if (!FitQuantities.NAMES.contains(name)) {
        figure(layout, sent, name, pointer, faults);
      }
    }
    sent.findObject("start").ifPresent(start -> start(layout, start, unknown, sent, faults));
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
  }

  private static void figure(
      LayoutDocument layout, Body sent, String name, String pointer, FaultList faults) {
    if (LayoutOverrides.numeric(layout, name).isEmpty()) {
      Set<String> known = new TreeSet<>(LayoutOverrides.names(layout));
      known.addAll(FitQuantities.NAMES);
      faults.add(
          pointer,
          "is "
              + name
              + ", which is no number of this "
              + layout.model()
              + " layout, its release or the frame; "
              + NearestName.find(name, known)
                  .map(near -> "did you mean " + near + "?")
                  .orElse("figures go by names such as lengthMm or magnet.1.x"));
      return;
    }
    boolean begins =
        LayoutOverrides.figure(layout, name).isPresent()
            || sent.findObject("start").filter(start -> start.has(name)).isPresent();
    if (!begins) {
      faults.add(pointer, name + " is not stated by the layout; say in start where to begin");
    }
  }

  private static void start(
      LayoutDocument layout, Body start, List<String> unknown, Body sent, FaultList faults) {
    for (String name : start.members().keySet()) {
      boolean release = FitQuantities.OF_RELEASE.contains(name) && !sent.has("release");
      if (!unknown.contains(name) && !release) {
        faults.add("/start/" + name, "is not sought; name it in unknown");
        continue;
      }
      double value = start.number(name);
      NumberShape shape =
          name.equals("scale")
              ? NumberShape.between(1e-3, 1e3)
              : LayoutOverrides.numeric(layout, name)
                  .filter(any -> !FitQuantities.NAMES.contains(name))
                  .orElse(FitShapes.NUMBER);
      if (!(value >= shape.least() && value <= shape.most())) {
        faults.add(
            "/start/" + name, "is " + Numbers.shortest(value) + "; must be " + shape.accepted());
      }
    }
  }
}
