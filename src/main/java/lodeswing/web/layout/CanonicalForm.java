package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.JsonPointer;
import lodeswing.web.body.NearestName;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A layout in its one canonical form: members in the shape's order, defaults filled in, stock and
 * patterns expanded into single magnets.
 *
 * @param body the layout as {@link LayoutShapes#STORED} reads it
 * @param places where its members stood in the body that was sent
 */
record CanonicalForm(Body body, SentPlaces places) {

  /**
   * Brings a layout that {@link LayoutShapes#REQUEST} has read into canonical form.
   *
   * @throws ProblemException {@code invalid-request} with every fault of stock and patterns
   */
  static CanonicalForm of(Body layout) {
    Body sent = layout.without(LayoutShapes.VISIBILITY);
    if (!sent.text("model").equals("bench")) {
      return new CanonicalForm(sent, new SentPlaces(sent.pointer(), numbered(sent)));
    }
    var expansion = new Expansion(sent);
    expansion.run();
    Body expanded =
        sent.without("stock", "patterns").with("magnets", List.copyOf(expansion.magnets));
    var places = new SentPlaces(sent.pointer(), expansion.places);
    expansion.faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The layout");
    return new CanonicalForm(reread(expanded, places), places);
  }

  /** The same layout as its owner's alone. */
  CanonicalForm sealed(Seal seal) {
    return new CanonicalForm(body.with(Seal.MEMBER, seal.body()), places);
  }

  /** A canonical form that is at hand already. */
  static CanonicalForm read(Body canonical) {
    return new CanonicalForm(canonical, new SentPlaces("", numbered(canonical)));
  }

  private static List<String> numbered(Body layout) {
    var places = new ArrayList<String>();
    for (int i = 0; i < layout.objects("magnets").size(); i++) {
      places.add(JsonPointer.element("/magnets", i));
    }
    return places;
  }

  private static Body reread(Body expanded, SentPlaces places) {
    try {
      return BodyReader.read(expanded.toTree(), LayoutShapes.STORED);
    } catch (ProblemException e) {
      var faults = new LinkedHashSet<Fault>();
      e.faults().forEach(f -> faults.add(new Fault(places.of(f.pointer()), f.detail())));
      var listed = new FaultList();
      faults.forEach(fault -> listed.add(fault.pointer(), fault.detail()));
      listed.refuseIfAny(e.code(), "The layout");
      throw e;
    }
  }

  /** Collects single magnets. */
  private static final class Expansion {
    private final Body sent;
    private final Body stock;
    private final List<Body> magnets = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private final FaultList faults = new FaultList();

    private Expansion(Body sent) {
      this.sent = sent;
      this.stock = sent.findObject("stock").orElseGet(() -> Body.of(Map.of()));
    }

    private void run() {
      List<Body> single = sent.objects("magnets");
      List<Body> patterns = sent.objects("patterns");
      int count = single.size() + patterns.stream().mapToInt(MagnetPatterns::count).sum();
      if (count > LayoutShapes.MOST_MAGNETS) {
        faults.add(
            sent.pointer("patterns"),
            "makes "
                + count
                + " magnets with those of magnets; at most "
                + LayoutShapes.MOST_MAGNETS
                + " are computed");
        return;
      }
      for (int i = 0; i < single.size(); i++) {
        single(single.get(i), JsonPointer.element("/magnets", i));
      }
      for (int i = 0; i < patterns.size(); i++) {
        pattern(patterns.get(i), JsonPointer.element("/patterns", i));
      }
    }

    private void single(Body magnet, String place) {
      var members = new LinkedHashMap<String, Object>();
      if (magnet.has("of")) {
        Optional<Body> named = stocked(magnet);
        if (named.isEmpty()) {
          return;
        }
        members.putAll(named.get().members());
      }
      members.putAll(magnet.without("of").members());
      add(members, place);
    }

    private void pattern(Body pattern, String place) {
      Optional<Body> magnet = pattern.has("of") ? stocked(pattern) : pattern.findObject("magnet");
      if (magnet.isEmpty()) {
        return;
      }
      List<String> poles = pattern.texts("poles");
      List<String> labels = pattern.texts("labels");
      List<MagnetPatterns.Place> spots = MagnetPatterns.places(pattern);
      if (labels.size() > spots.size()) {
        faults.add(
            pattern.pointer("labels"),
            "has " + labels.size() + " labels for " + spots.size() + " magnets");
      }
      for (int i = 0; i < spots.size(); i++) {
        var members = new LinkedHashMap<String, Object>(magnet.get().members());
        members.put("x", spots.get(i).x());
        members.put("y", spots.get(i).y());
        pattern.findNumber("bottomMm").ifPresent(bottom -> members.put("bottomMm", bottom));
        if (!poles.isEmpty()) {
          members.put("poleUp", poles.get(i % poles.size()));
        }
        if (i < labels.size()) {
          members.put("label", labels.get(i));
        }
        add(members, place);
      }
    }

    private Optional<Body> stocked(Body user) {
      String name = user.text("of");
      Optional<Body> named = stock.findObject(name);
      if (named.isEmpty()) {
        var names = stock.members().keySet();
        String known = names.isEmpty() ? "stock is empty" : "stock has " + String.join(", ", names);
        faults.add(
            user.pointer("of"),
            "is not in stock; "
                + NearestName.find(name, names)
                    .map(near -> "did you mean \"" + near + "\"?")
                    .orElse(known));
      }
      return named;
    }

    private void add(Map<String, Object> members, String place) {
      magnets.add(Body.of(members));
      places.add(place);
    }
  }
}
