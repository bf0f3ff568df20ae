package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NearestName;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import tools.jackson.databind.node.ObjectNode;

/**
 * A layout with some of its figures changed by query parameters.
 *
 * <p>A parameter's name is the dotted path of a member in the canonical form, list elements counted
 * from 1 and named in the singular: {@code gapMm}, {@code pendulum.lengthMm}, {@code
 * bobMagnet.grade}, {@code magnet.1.poleUp} (the first magnet), {@code magnet.all.bottomMm} (every
 * magnet), {@code pendulum.part.2.massG}, {@code damping.swingsToHalf}. Members of {@code pendulum}
 * and {@code damping} also go by their bare names. A member that cannot stand beside the changed
 * one ({@code grade} beside {@code remanenceT}) is dropped. Numbers may have a decimal comma.
 */
public final class LayoutOverrides {
  private LayoutOverrides() {}

  /**
   * The changed layout; the same document where nothing is changed.
   *
   * @param document the layout
   * @param overrides text values by parameter name
   * @param alsoKnown further names that the resource knows, to find the nearest of a wrong one
   * @throws ProblemException {@code unknown-parameter}, or every fault of the changed layout, with
   *     {@code ?name} in place of the pointer where a parameter is at fault
   */
  public static LayoutDocument apply(
      LayoutDocument document, Map<String, String> overrides, Collection<String> alsoKnown) {
    if (overrides.isEmpty()) {
      return document;
    }
    Map<String, List<OverrideTarget>> targets = OverrideTarget.of(document.canonical());
    refuseUnknown(overrides, targets, alsoKnown);
    ObjectNode tree = document.canonical().toTree();
    var names = new LinkedHashMap<String, String>();
    overrides.forEach(
        (name, text) -> {
          for (OverrideTarget target : targets.getOrDefault(name, List.of())) {
            target.set(tree, text);
            names.put(target.pointer(), "?" + name);
          }
        });
    try {
      Body changed = BodyReader.read(tree, LayoutShapes.CANONICAL);
      return LayoutDocument.of(CanonicalForm.read(changed));
    } catch (ProblemException e) {
      throw new ProblemException(
          e.code(), String.valueOf(e.getMessage()), named(e.faults(), names));
    }
  }

  /** Every name that may be changed in a layout. */
  public static List<String> names(LayoutDocument document) {
    return List.copyOf(OverrideTarget.of(document.canonical()).keySet());
  }

  private static void refuseUnknown(
      Map<String, String> overrides,
      Map<String, List<OverrideTarget>> targets,
      Collection<String> alsoKnown) {
    var known = new TreeSet<>(targets.keySet());
    known.addAll(alsoKnown);
    var faults = new FaultList();
    for (String name : overrides.keySet()) {
      if (!targets.containsKey(name)) {
        String detail =
            NearestName.find(name, known)
                .map(near -> "did you mean " + near + "?")
                .orElse("a layout's figures go by names such as gapMm or magnet.1.poleUp");
        faults.add("?" + name, "is not known here: " + detail);
      }
    }
    faults.refuseIfAny(ProblemCode.UNKNOWN_PARAMETER, "The query");
  }

  private static List<Fault> named(List<Fault> faults, Map<String, String> names) {
    var renamed = new ArrayList<Fault>();
    for (Fault fault : faults) {
      String pointer = Optional.ofNullable(names.get(fault.pointer())).orElse(fault.pointer());
      renamed.add(new Fault(pointer, fault.detail()));
    }
    return renamed;
  }
}
