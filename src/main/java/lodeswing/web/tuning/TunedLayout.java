package lodeswing.web.tuning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutWarning;

/** One layout that a tuning found, held against the one that it was made from. */
final class TunedLayout {

  /** Edges of magnets nearer than this get a warning [m]: our convention. */
  private static final double PINCHING = 0.01;

  /** Members of a magnet that say what it is, as an exchange changes them. */
  private static final List<String> FIGURES =
      List.of(
          "grade",
          "remanenceT",
          "diameterMm",
          "innerDiameterMm",
          "lengthMm",
          "widthMm",
          "heightMm",
          "momentAm2",
          "strength");

  private final TuningRequest request;
  private final LayoutDocument document;
  private final AimedHand hand;
  private final List<Integer> exchanged;
  private final List<String> atBounds;
  private final LabelOdds counted;
  private final LabelOdds confirmed;

  TunedLayout(TuningRequest request, WorkBench bench, StoredTuning.Rig rig) {
    int[] setting = rig.steps();
    this.request = request;
    this.document = bench.document(setting);
    this.hand = bench.aimed(setting);
    this.exchanged = bench.exchanged(setting);
    this.atBounds = bench.atBounds(setting);
    this.counted = new LabelOdds(request, document, rig.places(), rig.counted(), seed("seed"));
    this.confirmed =
        new LabelOdds(request, document, rig.places(), rig.confirmed(), seed("confirmSeed"));
  }

  private long seed(String name) {
    return (long) request.canonical().number(name);
  }

  /**
   * A magnet that is moved.
   *
   * @param magnet its index
   */
  record Move(int magnet, double dx, double dy, double x, double y) {}

  List<Move> moves() {
    List<Body> before = request.layout().canonical().objects("magnets");
    List<Body> after = document.canonical().objects("magnets");
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      double x = after.get(i).number("x");
      double y = after.get(i).number("y");
      double dx = tidy(x - before.get(i).number("x"));
      double dy = tidy(y - before.get(i).number("y"));
      if (dx != 0 || dy != 0) {
        moves.add(new Move(i, dx, dy, x, y));
      }
    }
    return moves;
  }

  /** A difference of two figures without the last digits' noise. */
  private static double tidy(double difference) {
    return Math.rint(difference * 1e6) / 1e6 + 0.0;
  }

  private OptionalDouble gapChange() {
    OptionalDouble before = request.layout().canonical().findNumber("gapMm");
    OptionalDouble after = document.canonical().findNumber("gapMm");
    return before.isPresent() && after.isPresent() && before.getAsDouble() != after.getAsDouble()
        ? OptionalDouble.of(tidy(after.getAsDouble() - before.getAsDouble()))
        : OptionalDouble.empty();
  }

  private Optional<Move> releaseMove() {
    Body before = request.canonical().object("release");
    double x = hand.release().number("x");
    double y = hand.release().number("y");
    double dx = tidy(x - before.number("x"));
    double dy = tidy(y - before.number("y"));
    return dx == 0 && dy == 0 ? Optional.empty() : Optional.of(new Move(-1, dx, dy, x, y));
  }

  private String exchange(int magnet) {
    Body body = document.canonical().objects("magnets").get(magnet);
    List<String> words = new ArrayList<>();
    for (String figure : FIGURES) {
      if (body.has(figure)) {
        words.add(
            figure
                + " "
                + body.findText(figure).orElseGet(() -> Numbers.plain(body.number(figure))));
      }
    }
    return String.join(", ", words);
  }

  LayoutDocument document() {
    return document;
  }

  AimedHand hand() {
    return hand;
  }

  LabelOdds counted() {
    return counted;
  }

  LabelOdds confirmed() {
    return confirmed;
  }

  List<String> atBounds() {
    return atBounds;
  }

  /** Whether the confirmed odds are within the tolerance. */
  boolean met() {
    return confirmed.distance() <= request.tolerance();
  }

  /** Whether their intervals are as a whole. */
  boolean certain() {
    return confirmed.distanceHigh() <= request.tolerance();
  }

  boolean unmoved() {
    return moves().isEmpty()
        && exchanged.isEmpty()
        && gapChange().isEmpty()
        && releaseMove().isEmpty();
  }

  /** The moves in plain words. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    for (Move move : moves()) {
      parts.add(request.name(move.magnet()) + " " + way(move) + " to " + at(move) + request.unit());
    }
    for (int magnet : exchanged) {
      parts.add("replace " + request.name(magnet) + " by one of " + exchange(magnet));
    }
    gapChange()
        .ifPresent(
            change ->
                parts.add(
                    (change > 0 ? "raise" : "lower")
                        + " the bob by "
                        + Numbers.plain(Math.abs(change))
                        + " mm"));
    releaseMove()
        .ifPresent(move -> parts.add("let go " + way(move) + " at " + at(move) + request.unit()));
    return parts.isEmpty() ? "Nothing moves." : "Move " + String.join("; ", parts) + ".";
  }

  private String way(Move move) {
    List<String> ways = new ArrayList<>();
    if (move.dx() != 0) {
      ways.add(length(move.dx()) + (move.dx() > 0 ? " to the right (+x)" : " to the left (-x)"));
    }
    if (move.dy() != 0) {
      ways.add(length(move.dy()) + (move.dy() > 0 ? " up (+y)" : " down (-y)"));
    }
    return String.join(" and ", ways);
  }

  private String length(double value) {
    return Numbers.plain(Math.abs(value)) + request.unit();
  }

  private static String at(Move move) {
    return "x=" + Numbers.plain(move.x()) + " y=" + Numbers.plain(move.y());
  }

  /** What to mind when it is built. */
  List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    document.warnings().stream().map(LayoutWarning::detail).forEach(warnings::add);
    if (document.layout() instanceof BenchLayout after
        && request.layout().layout() instanceof BenchLayout before) {
      for (int i = 0; i < after.magnets().size(); i++) {
        for (int j = i + 1; j < after.magnets().size(); j++) {
          double room = room(after.magnets().get(i), after.magnets().get(j));
          if (room < PINCHING && room < room(before.magnets().get(i), before.magnets().get(j))) {
            warnings.add(
                String.format(
                    Locale.ROOT,
                    "%s and %s come as near as %.1f mm, edge to edge: they may snap together and"
                        + " pinch; fix each before the next is set down.",
                    request.name(i),
                    request.name(j),
                    Math.max(0, 1e3 * room)));
          }
        }
      }
    }
    return warnings;
  }

  private static double room(PlacedMagnet one, PlacedMagnet other) {
    return Math.hypot(one.centre().x() - other.centre().x(), one.centre().y() - other.centre().y())
        - one.magnet().planRadius()
        - other.magnet().planRadius();
  }

  Body body(String tuning, int rank) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", document.layoutId());
    members.put("moves", moves().stream().map(this::body).toList());
    gapChange().ifPresent(change -> members.put("gapChangeMm", change));
    members.put("exchanges", exchanged.stream().map(this::exchangeBody).toList());
    releaseMove().ifPresent(move -> members.put("releaseMove", Body.of(placed(move))));
    members.put("movesSentence", sentence());
    members.put("after", counted.body());
    members.put("confirmed", confirmed.body());
    members.put("met", met());
    members.put("certain", certain());
    members.put("atBounds", atBounds);
    members.put("warnings", warnings());
    members.put("links", links(tuning, rank));
    return Body.of(members);
  }

  private Body body(Move move) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("magnet", move.magnet() + 1.0);
    request.layout().labels().get(move.magnet()).ifPresent(label -> members.put("label", label));
    members.putAll(placed(move));
    return Body.of(members);
  }

  private static Map<String, Object> placed(Move move) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("dx", move.dx());
    members.put("dy", move.dy());
    members.put("x", move.x());
    members.put("y", move.y());
    return members;
  }

  private Body exchangeBody(int magnet) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("magnet", magnet + 1.0);
    request.layout().labels().get(magnet).ifPresent(label -> members.put("label", label));
    members.put("by", exchange(magnet));
    return Body.of(members);
  }

  private Body links(String tuning, int rank) {
    String layout = "/v1/layouts/" + document.layoutId();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("layout", layout);
    links.put("plate", tuning + "/plate?rank=" + rank);
    links.put("restPoints", layout + "/rest-points");
    links.put("basin", layout + "/basin");
    odds(layout).ifPresent(url -> links.put("odds", url));
    return Body.of(links);
  }

  /** The confirmed odds by address, where an address can say the hand. */
  private Optional<String> odds(String layout) {
    Body spread = hand.spread();
    Body release = hand.release();
    String size =
        switch (spread.text("kind")) {
          case "disc" -> "&kind=disc&spreadMm=" + Numbers.shortest(spread.number("radius"));
          case "ring" ->
              "&kind=ring&innerMm="
                  + Numbers.shortest(spread.number("innerRadius"))
                  + "&spreadMm="
                  + Numbers.shortest(spread.number("outerRadius"));
          case "gaussian" -> "&spreadMm=" + Numbers.shortest(spread.number("deviation"));
          default -> "";
        };
    return size.isEmpty()
        ? Optional.empty()
        : Optional.of(
            layout
                + "/odds?x="
                + Numbers.shortest(release.number("x"))
                + "&y="
                + Numbers.shortest(release.number("y"))
                + "&vx="
                + Numbers.shortest(release.number("vx"))
                + "&vy="
                + Numbers.shortest(release.number("vy"))
                + size
                + "&spreadMmPerS="
                + Numbers.shortest(spread.number("speedDeviation"))
                + "&width="
                + Numbers.shortest(request.width())
                + "&interval="
                + request.canonical().text("interval")
                + "&seed="
                + Numbers.shortest(request.canonical().number("confirmSeed")));
  }
}
