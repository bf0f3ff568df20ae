package lodeswing.web.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.HookedBar;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/** What a bar is built from, part by part, with masses weighed or from size and material. */
final class PartsList {

  private static final double GRAMS = 1000;

  /** Members that say how large a part is, in the order they are told. */
  private static final List<String> SIZES =
      List.of(
          "diameterMm",
          "innerDiameterMm",
          "acrossFlatsMm",
          "holeDiameterMm",
          "lengthMm",
          "widthMm",
          "heightMm");

  private PartsList() {}

  /** Whether a layout has parts to list. */
  static boolean has(LayoutDocument document) {
    return bar(document).isPresent();
  }

  private static Optional<HookedBar> bar(LayoutDocument document) {
    return document.layout() instanceof BenchLayout bench
            && bench.suspension() instanceof HookedBar own
        ? Optional.of(own)
        : Optional.empty();
  }

  /** Mass of all that hangs [g]; empty in a textbook layout. */
  static OptionalDouble mass(LayoutDocument document) {
    return document.layout() instanceof BenchLayout bench
        ? OptionalDouble.of(grams(bench.suspension().body().mass()))
        : OptionalDouble.empty();
  }

  /** The parts of the bar, its magnet last, then the magnets of the plate, alike ones together. */
  static List<Body> of(LayoutDocument document) {
    List<Body> list = new ArrayList<>();
    List<BarPart> parts = bar(document).orElseThrow().parts();
    List<Body> sent = document.canonical().object("pendulum").objects("parts");
    for (int i = 0; i < sent.size(); i++) {
      list.add(
          entry(
              "/pendulum/parts/" + i,
              sent.get(i).text("kind"),
              sent.get(i),
              1,
              OptionalDouble.of(parts.get(i).mass())));
    }
    document
        .canonical()
        .findObject("bobMagnet")
        .ifPresent(
            bob ->
                list.add(
                    entry(
                        "/bobMagnet",
                        bob.text("shape") + " magnet",
                        bob,
                        1,
                        OptionalDouble.of(parts.get(parts.size() - 1).mass()))));
    list.addAll(plate(document));
    return list;
  }

  private static List<Body> plate(LayoutDocument document) {
    List<Body> magnets = document.canonical().objects("magnets");
    Map<String, List<Integer>> alike = new LinkedHashMap<>();
    for (int i = 0; i < magnets.size(); i++) {
      String kind =
          magnets.get(i).without("x", "y", "label", "poleUp", "bottomMm", "turnDeg").toJson();
      alike.computeIfAbsent(kind, key -> new ArrayList<>()).add(i);
    }
    List<Body> list = new ArrayList<>();
    for (List<Integer> same : alike.values()) {
      int first = same.get(0);
      list.add(
          entry(
              "/magnets/" + first,
              magnets.get(first).text("shape") + " magnet",
              magnets.get(first),
              same.size(),
              document.magnetMasses().get(first)));
    }
    return list;
  }

  private static Body entry(
      String pointer, String what, Body sent, int count, OptionalDouble mass) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("pointer", pointer);
    members.put("what", what);
    members.put("count", (double) count);
    List<String> sizes = new ArrayList<>();
    for (String size : SIZES) {
      if (sent.has(size)) {
        sizes.add(
            size.substring(0, size.length() - 2)
                + " "
                + Numbers.shortest(sent.number(size))
                + " mm");
      }
    }
    if (!sizes.isEmpty()) {
      members.put("size", String.join(", ", sizes));
    }
    sent.findText("material").or(() -> sent.findText("grade")).ifPresent(m -> members.put("of", m));
    if (mass.isPresent()) {
      members.put("massG", grams(mass.getAsDouble()));
      members.put("weighed", sent.has("massG"));
    }
    return Body.of(members);
  }

  private static double grams(double kilograms) {
    return Math.rint(kilograms * GRAMS * 1e3) / 1e3;
  }
}
