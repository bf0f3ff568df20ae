package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.hand.HandByAddress;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/** What odds are asked in the parameters of an address. */
final class OddsByAddress {

  private static final Parameter<Double> WIDTH =
      number("width", OddsShapes.WIDTH).orElse(OddsShapes.USUAL_WIDTH);
  private static final Parameter<String> INTERVAL =
      Parameter.oneOf("interval", OddsShapes.INTERVAL.words().toArray(String[]::new))
          .orElse(OddsShapes.USUAL_INTERVAL);
  private static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse((int) OddsShapes.USUAL_SEED);
  private static final Parameter<Boolean> PARTS = Parameter.flag("parts").orElse(false);
  private static final Parameter<Integer> RIGS =
      Parameter.integer("rigs", (int) OddsShapes.RIGS.least(), OddsShapes.MOST_RIGS)
          .orElse((int) OddsShapes.USUAL_RIGS);

  private static final int LONGEST_COUNTS = 2_000;

  /**
   * A label may hold commas and colons: it ends at a colon with a number up to a comma or the end.
   */
  private static final Pattern COUNT = Pattern.compile("(.{1,200}?):(\\d{1,7})(?:,|$)");

  private static final Parameter<List<Body>> COUNTS =
      Parameter.of(
          "counts",
          "labels with their whole counts, up to "
              + (long) OddsShapes.COUNTED_TIMES.most()
              + " each, as in Tide:11,Dune:12",
          OddsByAddress::counts);

  private OddsByAddress() {}

  private static Optional<List<Body>> counts(String text) {
    List<Body> counts = new ArrayList<>();
    Matcher one = COUNT.matcher(text);
    int read = 0;
    while (one.find() && one.start() == read) {
      double count = Double.parseDouble(one.group(2));
      if (count > OddsShapes.COUNTED_TIMES.most()) {
        return Optional.empty();
      }
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("label", one.group(1));
      line.put("count", count);
      counts.add(Body.of(line));
      read = one.end();
    }
    boolean whole = read == text.length() && !text.endsWith(",") && text.length() <= LONGEST_COUNTS;
    return whole && counts.size() <= OddsShapes.MOST_COUNTS && !counts.isEmpty()
        ? Optional.of(List.copyOf(counts))
        : Optional.empty();
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  /** Its parameters. */
  static List<Parameter<?>> all() {
    return List.of(
        HandByAddress.X,
        HandByAddress.Y,
        HandByAddress.VX,
        HandByAddress.VY,
        HandByAddress.KIND,
        HandByAddress.SPREAD,
        HandByAddress.INNER,
        HandByAddress.PUSH,
        WIDTH,
        INTERVAL,
        SEED,
        PARTS,
        RIGS,
        COUNTS);
  }

  /** What they say about themselves. */
  static List<ParameterText> texts() {
    List<ParameterText> all = new ArrayList<>();
    all.add(ParameterText.needed("x", HandShapes.PLACE, "Where the hand means to let go.", "-70"));
    all.add(ParameterText.needed("y", HandShapes.PLACE, "Where the hand means to let go.", "30"));
    all.add(
        ParameterText.needed(
            "spreadMm",
            HandShapes.SIZE,
            "Standard deviation along either axis, or the (outer) radius of a disc or ring; in a"
                + " textbook layout in its own unit of length.",
            "3"));
    all.add(ParameterText.optional("vx", HandShapes.SPEED, "The push that it means along x.", "0"));
    all.add(ParameterText.optional("vy", HandShapes.SPEED, "The push that it means along y.", "0"));
    all.add(
        ParameterText.optional(
            "kind", ChoiceShape.of("gaussian", "disc", "ring"), "How it wanders.", "gaussian"));
    all.add(ParameterText.optional("innerMm", HandShapes.SIZE, "Inner radius of a ring.", "0"));
    all.add(
        ParameterText.optional(
            "spreadMmPerS",
            HandShapes.SPEED_SIZE,
            "Standard deviation of the push along either axis.",
            "0"));
    all.add(
        ParameterText.optional(
            "width", OddsShapes.WIDTH, "How long intervals may be at most.", "0.02"));
    all.add(ParameterText.optional("interval", OddsShapes.INTERVAL, "Whose intervals.", "wilson"));
    all.add(
        ParameterText.optional(
            "seed", OddsShapes.SEED, "Seed of the tries and of the parts.", "1"));
    all.add(
        ParameterText.optional(
            "parts",
            new FlagShape(),
            "true: vary the parts too, by the layout's tolerances, which may be given as"
                + " tolerances.gapMm and so on.",
            "false"));
    all.add(ParameterText.optional("rigs", OddsShapes.RIGS, "How many rigs are built anew.", "16"));
    all.add(
        ParameterText.optional(
            "counts",
            new TextShape(LONGEST_COUNTS),
            "What a class counted, to be held against the odds: labels with their counts, commas"
                + " between them.",
            "Tide:11,Dune:12,Reef:7"));
    return all;
  }

  /** The same as a body. */
  static Body body(QueryParameters query) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", HandByAddress.release(query));
    members.put("spread", HandByAddress.spread(query));
    members.put("parts", query.get(PARTS));
    members.put("width", query.get(WIDTH));
    members.put("interval", query.get(INTERVAL));
    members.put("seed", (double) query.get(SEED));
    members.put("rigs", (double) query.get(RIGS));
    query.find(COUNTS).ifPresent(counts -> members.put("counts", counts));
    return Body.of(members);
  }
}
