package lodeswing.web.layout;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
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

  /** A member of a numbered magnet or part. */
  private static final Pattern NUMBERED =
      Pattern.compile("((?:.*\\.)?(magnet|part)\\.)(\\d{1,20})(\\..+)");

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
    var names = new ParameterNames(targets);
    overrides.forEach(
        (name, text) -> {
          for (OverrideTarget target : targets.getOrDefault(name, List.of())) {
            target.set(tree, text);
            names.change(target.pointer(), name);
          }
        });
    try {
      Body changed = BodyReader.read(tree, LayoutShapes.CANONICAL);
      return LayoutDocument.of(CanonicalForm.read(changed));
    } catch (ProblemException e) {
      throw new ProblemException(e.code(), String.valueOf(e.getMessage()), names.of(e.faults()));
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
            beyondTheLast(name, targets)
                .or(() -> NearestName.find(name, known).map(near -> "did you mean " + near + "?"))
                .orElse("a layout's figures go by names such as gapMm or magnet.1.poleUp");
        faults.add("?" + name, "is not known here: " + detail);
      }
    }
    faults.refuseIfAny(ProblemCode.UNKNOWN_PARAMETER, "The query");
  }

  /** Says how many magnets or parts there are, where a number goes beyond them. */
  private static Optional<String> beyondTheLast(
      String name, Map<String, List<OverrideTarget>> targets) {
    Matcher numbered = NUMBERED.matcher(name);
    if (!numbered.matches()) {
      return Optional.empty();
    }
    String before = numbered.group(1);
    String after = numbered.group(4);
    int count = 0;
    while (hasNumber(targets, before + (count + 1) + ".")) {
      count++;
    }
    String things = numbered.group(2).equals("magnet") ? "magnets" : "parts";
    if (count == 0) {
      return Optional.of("there are no " + things + " to change");
    }
    boolean inRange =
        numbered.group(3).length() < 9 && 0 < number(numbered) && number(numbered) <= count;
    boolean member =
        IntStream.rangeClosed(1, count).anyMatch(i -> targets.containsKey(before + i + after));
    return inRange || !member
        ? Optional.empty()
        : Optional.of("there are " + count + " " + things + ", numbered from 1 to " + count);
  }

  private static int number(Matcher numbered) {
    return Integer.parseInt(numbered.group(3));
  }

  private static boolean hasNumber(Map<String, List<OverrideTarget>> targets, String prefix) {
    return targets.keySet().stream().anyMatch(name -> name.startsWith(prefix));
  }

  /** Faults under the names of parameters, since whoever asks by an address has sent no body. */
  private static final class ParameterNames {
    private final Map<String, String> changed = new LinkedHashMap<>();
    private final Map<String, String> known = new LinkedHashMap<>();

    ParameterNames(Map<String, List<OverrideTarget>> targets) {
      targets.forEach(
          (name, members) -> members.forEach(m -> known.putIfAbsent(m.pointer(), "?" + name)));
    }

    void change(String pointer, String name) {
      changed.put(pointer, "?" + name);
    }

    List<Fault> of(List<Fault> faults) {
      return faults.stream().map(f -> new Fault(of(f.pointer()), f.detail())).toList();
    }

    /** The parameter that changed the place or something in it; else the likeliest to blame. */
    private String of(String pointer) {
      return under(changed, pointer)
          .or(
              () ->
                  changed.values().stream().distinct().count() == 1
                      ? first(changed)
                      : Optional.empty())
          .or(() -> under(known, pointer))
          .or(() -> first(changed))
          .orElse(pointer);
    }

    private static Optional<String> under(Map<String, String> names, String pointer) {
      String exact = names.get(pointer);
      return exact != null
          ? Optional.of(exact)
          : names.entrySet().stream()
              .filter(entry -> entry.getKey().startsWith(pointer + "/"))
              .map(Map.Entry::getValue)
              .findFirst();
    }

    private static Optional<String> first(Map<String, String> names) {
      return names.values().stream().findFirst();
    }
  }
}
