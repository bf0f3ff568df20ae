package lodeswing.web.layout;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.NumberShape;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A layout with some of its figures changed by query parameters.
 *
 * <p>A parameter's name is the dotted path of a member in the canonical form, list elements counted
 * from 1 and named in the singular: {@code gapMm}, {@code pendulum.lengthMm}, {@code
 * bobMagnet.grade}, {@code magnet.1.poleUp} (the first magnet), {@code magnet.all.bottomMm} (every
 * magnet but those whose own is given), {@code pendulum.part.2.massG}, {@code
 * damping.swingsToHalf}. Members of {@code pendulum} and {@code damping} also go by their bare
 * names. A member of the layout that cannot stand beside the changed one ({@code grade} beside
 * {@code remanenceT}) is dropped; two of these in one query are a fault, as in a body. Numbers may
 * have a decimal comma. How the magnets stand to each other goes by names of its own, see {@link
 * Arrangement}.
 */
public final class LayoutOverrides {

  /** A member of a numbered magnet or part. */
  private static final Pattern NUMBERED =
      Pattern.compile("((?:.*\\.)?(magnet|part)\\.)(\\d{1,20})(\\..+)");

  private static final String SUBJECT = "The query";

  private final Arrangement arrangement;
  private final Map<String, List<OverrideTarget>> targets;
  private final Map<String, String> arranged = new LinkedHashMap<>();
  private final Map<String, String> written = new LinkedHashMap<>();
  private final FaultList faults = new FaultList();
  private boolean unknownName;

  private LayoutOverrides(LayoutDocument document, Map<String, String> overrides) {
    this.arrangement = new Arrangement(document.canonical());
    overrides.forEach(
        (name, text) -> {
          if (arrangement.names().contains(name)) {
            arranged.put(name, text);
          }
        });
    this.targets = OverrideTarget.of(arrangement.changed(arranged, faults));
  }

  /** The names by which figures of a layout may be changed, in alphabetical order. */
  public static Set<String> names(LayoutDocument document) {
    var names = new TreeSet<>(OverrideTarget.of(document.canonical()).keySet());
    names.addAll(new Arrangement(document.canonical()).names());
    return names;
  }

  /** What a figure may be; empty where the layout has none of that name, or it is no number. */
  public static Optional<NumberShape> numeric(LayoutDocument document, String name) {
    return OverrideTarget.of(document.canonical()).getOrDefault(name, List.of()).stream()
        .findFirst()
        .map(OverrideTarget::shape)
        .filter(NumberShape.class::isInstance)
        .map(NumberShape.class::cast);
  }

  /** What a figure is; empty where the layout leaves it out. */
  public static OptionalDouble figure(LayoutDocument document, String name) {
    return OverrideTarget.of(document.canonical()).getOrDefault(name, List.of()).stream()
        .map(target -> document.canonical().toTree().at(target.pointer()))
        .filter(JsonNode::isNumber)
        .mapToDouble(JsonNode::asDouble)
        .findFirst();
  }

  /**
   * The changed layout; the same document where nothing is changed.
   *
   * @param document the layout
   * @param overrides text values by parameter name
   * @param alsoKnown further names that the resource knows, to find the nearest of a wrong one
   * @throws ProblemException {@code unknown-parameter}, or every fault of the changed layout that
   *     can be judged, with {@code ?name} in place of the pointer
   */
  public static LayoutDocument apply(
      LayoutDocument document, Map<String, String> overrides, Collection<String> alsoKnown) {
    if (overrides.isEmpty()) {
      return document;
    }
    var change = new LayoutOverrides(document, overrides);
    change.readNames(overrides, alsoKnown);
    change.refuseTwice();
    return change.made();
  }

  private void readNames(Map<String, String> overrides, Collection<String> alsoKnown) {
    var known = new TreeSet<>(targets.keySet());
    known.addAll(arrangement.names());
    known.addAll(alsoKnown);
    overrides.forEach(
        (name, text) -> {
          if (arranged.containsKey(name)) {
            return;
          }
          if (targets.containsKey(name)) {
            written.put(name, text);
          } else {
            unknownName = true;
            String detail =
                beyondTheLast(name)
                    .or(
                        () ->
                            NearestName.find(name, known).map(near -> "did you mean " + near + "?"))
                    .orElse("a layout's figures go by names such as gapMm or magnet.1.poleUp");
            faults.add("?" + name, "is not known here: " + detail);
          }
        });
  }

  /** One member under two names. */
  private void refuseTwice() {
    var names = new LinkedHashMap<String, String>();
    for (String name : List.copyOf(written.keySet())) {
      if (!everyMagnet(name)) {
        for (OverrideTarget target : of(name)) {
          String earlier = names.putIfAbsent(target.pointer(), name);
          if (earlier != null) {
            faults.add("?" + name, "is given as " + earlier + " already; give it once");
            written.remove(name);
          }
        }
      }
    }
    for (String name : List.copyOf(written.keySet())) {
      for (String mover : arranged.keySet()) {
        if (arrangement.moves(mover, name)) {
          faults.add("?" + name, "moves what " + mover + " moves already; give one of them");
        }
      }
    }
  }

  private Set<String> all() {
    var all = new LinkedHashSet<>(arranged.keySet());
    all.addAll(written.keySet());
    return all;
  }

  private LayoutDocument made() {
    var names = new WrittenNames(pointers(all()));
    Body changed;
    try {
      changed = read(all());
    } catch (ProblemException e) {
      e.faults().forEach(fault -> faults.add(names.of(fault), fault.detail()));
      throw refusal(readable(e.faults()));
    }
    if (!faults.isEmpty()) {
      throw refusal(all());
    }
    try {
      return LayoutDocument.of(CanonicalForm.read(changed));
    } catch (ProblemException e) {
      List<Fault> blamed =
          e.faults().stream()
              .map(fault -> new Fault(names.blamed(fault, this::faultsWithout), fault.detail()))
              .toList();
      throw new ProblemException(e.code(), String.valueOf(e.getMessage()), blamed);
    }
  }

  /** The layout with some of the written figures, those of every magnet first. */
  private Body read(Set<String> names) {
    Map<String, String> kept = new LinkedHashMap<>(arranged);
    kept.keySet().retainAll(names);
    Body base = arrangement.changed(kept, new FaultList());
    Map<String, List<OverrideTarget>> own =
        kept.equals(arranged) ? targets : OverrideTarget.of(base);
    ObjectNode tree = base.toTree();
    List<String> inOrder = inOrder(names).stream().filter(written::containsKey).toList();
    inOrder.forEach(
        name -> own.getOrDefault(name, List.of()).forEach(target -> target.dropRivals(tree)));
    inOrder.forEach(
        name ->
            own.getOrDefault(name, List.of())
                .forEach(target -> target.set(tree, written.getOrDefault(name, ""))));
    return BodyReader.read(tree, LayoutShapes.STORED);
  }

  /** The name that has the last word on each member. */
  private Map<String, String> pointers(Set<String> names) {
    var pointers = new LinkedHashMap<String, String>();
    names.stream()
        .filter(arranged::containsKey)
        .forEach(name -> places().forEach(pointer -> pointers.put(pointer, name)));
    inOrder(names).forEach(name -> of(name).forEach(t -> pointers.put(t.pointer(), name)));
    return pointers;
  }

  /** What an arrangement changes, of every magnet. */
  private List<String> places() {
    return targets.values().stream()
        .flatMap(List::stream)
        .filter(target -> target.ownerPointer().startsWith("/magnets/"))
        .filter(target -> List.of("x", "y", "poleUp").contains(target.member()))
        .map(OverrideTarget::pointer)
        .distinct()
        .toList();
  }

  private static List<String> inOrder(Set<String> names) {
    return names.stream()
        .sorted((a, b) -> Boolean.compare(everyMagnet(b), everyMagnet(a)))
        .toList();
  }

  private static boolean everyMagnet(String name) {
    return name.startsWith(OverrideTarget.EVERY);
  }

  private List<OverrideTarget> of(String name) {
    return targets.getOrDefault(name, List.of());
  }

  /** What is wrong with the layout where one of the figures stays as it was. */
  private List<Fault> faultsWithout(String name) {
    Set<String> others = all();
    others.remove(name);
    try {
      new LayoutMapper(CanonicalForm.read(read(others))).map();
      return List.of();
    } catch (ProblemException e) {
      return e.faults();
    }
  }

  /** The names that changed nothing that has one of these faults. */
  private Set<String> readable(List<Fault> found) {
    Set<String> readable = all();
    for (Fault fault : found) {
      readable.removeIf(
          name ->
              of(name).stream()
                  .anyMatch(target -> WrittenNames.within(target.pointer(), fault.pointer())));
    }
    return readable;
  }

  /**
   * The problem of everything that is wrong, parts that cannot be built among it.
   *
   * @param readable the names whose values can be read
   */
  private ProblemException refusal(Set<String> readable) {
    Map<String, String> pointers = pointers(readable);
    for (Fault fault : faultsOfParts(readable)) {
      String name = pointers.get(fault.pointer());
      if (name != null && !besideUnreadable(fault.pointer(), readable)) {
        faults.add("?" + name, fault.detail());
      }
    }
    try {
      faults.refuseIfAny(
          unknownName ? ProblemCode.UNKNOWN_PARAMETER : ProblemCode.INVALID_REQUEST, SUBJECT);
    } catch (ProblemException e) {
      return e;
    }
    throw new IllegalStateException("refused without a fault");
  }

  private List<Fault> faultsOfParts(Set<String> readable) {
    try {
      return new LayoutMapper(CanonicalForm.read(read(readable))).faultsOfParts();
    } catch (ProblemException e) {
      return List.of();
    }
  }

  /**
   * Whether another figure of the same part could not be read, so that the fault may be another.
   */
  private boolean besideUnreadable(String pointer, Set<String> readable) {
    String owner = pointer.substring(0, pointer.lastIndexOf('/'));
    return !owner.isEmpty()
        && written.keySet().stream()
            .filter(name -> !readable.contains(name))
            .flatMap(name -> of(name).stream())
            .anyMatch(target -> target.ownerPointer().equals(owner));
  }

  /** Says how many magnets or parts there are, where a number goes beyond them. */
  private Optional<String> beyondTheLast(String name) {
    Matcher numbered = NUMBERED.matcher(name);
    if (!numbered.matches()) {
      return Optional.empty();
    }
    String before = numbered.group(1);
    String after = numbered.group(4);
    int count = 0;
    while (hasNumber(before + (count + 1) + ".")) {
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

  private boolean hasNumber(String prefix) {
    return targets.keySet().stream().anyMatch(name -> name.startsWith(prefix));
  }
}
