package lodeswing.web.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.HookedBar;
import lodeswing.sheet.SheetMagnet;
import lodeswing.sheet.Table;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.plate.PlateMap;
import lodeswing.words.Words;

/** The parts of a rig on the bench in the words of a reader, as they are bought and measured. */
final class PartWords {

  private static final int DIGITS = 7;
  private static final double GRAMS = 1000;
  private static final int MASS_DIGITS = 4;

  private final LayoutDocument layout;
  private final Words words;

  PartWords(LayoutDocument layout, Words words) {
    this.layout = layout;
    this.words = words;
  }

  /** The magnets of the plate. */
  List<SheetMagnet> magnets() {
    List<SheetMagnet> magnets = new ArrayList<>();
    var placed = new PlateMap(layout).magnets();
    List<Body> sent = layout.canonical().objects("magnets");
    for (int i = 0; i < sent.size(); i++) {
      String kind = kind(sent.get(i)) + size(sent.get(i)).map(size -> " " + size).orElse("");
      magnets.add(new SheetMagnet(placed.get(i), kind, grade(sent.get(i))));
    }
    return magnets;
  }

  private String kind(Body magnet) {
    return words.text("part." + magnet.text("shape") + "-magnet");
  }

  private Optional<String> size(Body magnet) {
    return switch (magnet.text("shape")) {
      case "disc" -> Optional.of(sized("size.disc", magnet, "diameter", "height"));
      case "ring" ->
          Optional.of(
              words.text(
                  "size.ring",
                  Map.of(
                      "diameter",
                      millimetres(magnet, "diameter"),
                      "inner",
                      millimetres(magnet, "innerDiameter"),
                      "height",
                      millimetres(magnet, "height"))));
      case "block" -> Optional.of(sized("size.block", magnet, "length", "width", "height"));
      case "sphere" -> Optional.of(sized("size.sphere", magnet, "diameter"));
      default -> Optional.empty();
    };
  }

  private String sized(String key, Body part, String... names) {
    Map<String, String> sizes = new LinkedHashMap<>();
    for (String name : names) {
      sizes.put(name, millimetres(part, name));
    }
    return words.text(key, sizes);
  }

  private String millimetres(Body part, String name) {
    return words.number(part.number(name + "Mm"), DIGITS);
  }

  private String grade(Body magnet) {
    return magnet
        .findText("grade")
        .or(() -> told("remanence", magnet.findNumber("remanenceT")))
        .or(() -> told("moment", magnet.findNumber("momentAm2")))
        .orElse("");
  }

  private Optional<String> told(String key, OptionalDouble value) {
    return value.isPresent()
        ? Optional.of(words.text(key, Map.of("value", words.number(value.getAsDouble(), DIGITS))))
        : Optional.empty();
  }

  /** All that is needed, alike things together. */
  Table table() {
    List<List<String>> rows = new ArrayList<>();
    plate(rows);
    layout.canonical().findObject("bobMagnet").ifPresent(magnet -> bob(magnet, rows));
    pendulum(layout.canonical().object("pendulum"), rows);
    rows.add(
        row(0, words.text("part.gap"), length(layout.canonical().number("gapMm")), "", "", ""));
    layout
        .canonical()
        .findObject("backing")
        .ifPresent(
            backing ->
                rows.add(
                    row(
                        1,
                        words.text("part.backing", Map.of("top", millimetres(backing, "top"))),
                        "",
                        words.text("material.steel"),
                        "",
                        "")));
    List<Table.Column> columns = new ArrayList<>();
    for (String name : List.of("count", "part", "size", "material", "mass", "numbers")) {
      boolean figures = name.equals("count") || name.equals("mass");
      columns.add(new Table.Column(words.text("column." + name), figures));
    }
    return new Table(columns, rows);
  }

  private List<String> row(
      int count, String part, String size, String material, String mass, String numbers) {
    // What is a figure and no thing has no count.
    return List.of(
        count == 0 ? "" : words.number(count, DIGITS), part, size, material, mass, numbers);
  }

  private String length(double millimetres) {
    return words.text("size.length", Map.of("length", words.number(millimetres, DIGITS)));
  }

  private void plate(List<List<String>> rows) {
    List<Body> magnets = layout.canonical().objects("magnets");
    Map<String, List<Integer>> alike = new LinkedHashMap<>();
    for (int i = 0; i < magnets.size(); i++) {
      String kind =
          magnets.get(i).without("x", "y", "label", "poleUp", "bottomMm", "turnDeg").toJson();
      alike.computeIfAbsent(kind, key -> new ArrayList<>()).add(i);
    }
    List<OptionalDouble> masses = layout.magnetMasses();
    for (List<Integer> same : alike.values()) {
      Body first = magnets.get(same.get(0));
      rows.add(
          row(
              same.size(),
              kind(first),
              size(first).orElse(""),
              grade(first),
              mass(masses.get(same.get(0))),
              ranges(same)));
    }
  }

  /** Numbers from 1, those that follow each other as from-to. */
  private static String ranges(List<Integer> places) {
    List<String> ranges = new ArrayList<>();
    for (int from = 0; from < places.size(); ) {
      int to = from;
      while (to + 1 < places.size() && places.get(to + 1) == places.get(to) + 1) {
        to++;
      }
      String first = Integer.toString(places.get(from) + 1);
      ranges.add(to == from ? first : first + "–" + (places.get(to) + 1));
      from = to + 1;
    }
    return String.join(", ", ranges);
  }

  private String mass(OptionalDouble kilograms) {
    return kilograms.isPresent()
        ? words.text(
            "mass", Map.of("value", words.number(kilograms.getAsDouble() * GRAMS, MASS_DIGITS)))
        : "";
  }

  private void bob(Body magnet, List<List<String>> rows) {
    String pole = words.text("pole-down." + magnet.text("poleDown"));
    rows.add(
        row(
            1,
            words.text("part.on-bob", Map.of("kind", kind(magnet), "pole", pole)),
            size(magnet).orElse(""),
            grade(magnet),
            "",
            ""));
  }

  private void pendulum(Body pendulum, List<List<String>> rows) {
    switch (pendulum.text("kind")) {
      case "cord" ->
          rows.add(
              row(1, words.text("part.cord"), length(pendulum.number("lengthMm")), "", "", ""));
      case "yoke" ->
          rows.add(
              row(
                  1,
                  words.text(
                      "part.yoke-legs",
                      Map.of(
                          "span",
                          millimetres(pendulum, "yokeSpan"),
                          "drop",
                          millimetres(pendulum, "yokeDrop"))),
                  length(pendulum.number("legMm")),
                  "",
                  "",
                  ""));
      default -> bar(pendulum, rows);
    }
    OptionalDouble bob = pendulum.findNumber("bobMassG");
    if (bob.isPresent()) {
      OptionalDouble kilograms = OptionalDouble.of(bob.getAsDouble() / GRAMS);
      rows.add(row(1, words.text("part.bob"), "", "", mass(kilograms), ""));
    }
  }

  private void bar(Body pendulum, List<List<String>> rows) {
    if (pendulum.number("hookOffsetMm") > 0) {
      rows.add(
          row(
              1,
              words.text("part.hook-offset", Map.of("offset", millimetres(pendulum, "hookOffset"))),
              "",
              "",
              "",
              ""));
    }
    List<Body> parts = pendulum.objects("parts");
    List<BarPart> built =
        layout.layout() instanceof BenchLayout bench && bench.suspension() instanceof HookedBar own
            ? own.parts()
            : List.of();
    for (int i = 0; i < parts.size(); i++) {
      Body part = parts.get(i);
      OptionalDouble mass =
          i < built.size() ? OptionalDouble.of(built.get(i).mass()) : OptionalDouble.empty();
      String material =
          part.findText("material").map(word -> words.text("material." + word)).orElse("");
      rows.add(
          row(
              1,
              words.text("part." + part.text("kind")),
              partSize(part),
              material,
              mass(mass),
              ""));
    }
  }

  private String partSize(Body part) {
    return switch (part.text("kind")) {
      case "rod" -> sized("size.rod", part, "diameter", "length");
      case "disc" -> sized("size.disc", part, "diameter", "height");
      case "ring" ->
          words.text(
              "size.ring",
              Map.of(
                  "diameter",
                  millimetres(part, "diameter"),
                  "inner",
                  millimetres(part, "innerDiameter"),
                  "height",
                  millimetres(part, "height")));
      case "nut" ->
          words.text(
              "size.nut",
              Map.of(
                  "flats",
                  millimetres(part, "acrossFlats"),
                  "hole",
                  millimetres(part, "holeDiameter"),
                  "height",
                  millimetres(part, "height")));
      default -> "";
    };
  }
}
