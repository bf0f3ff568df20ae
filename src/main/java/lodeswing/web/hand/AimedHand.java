package lodeswing.web.hand;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.NormalSpread;
import lodeswing.core.chance.PolygonSpread;
import lodeswing.core.chance.RingSpread;
import lodeswing.core.chance.Spread;
import lodeswing.core.rig.Release;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LayoutPlace;

/**
 * A hand as it is asked about, in the layout's own units.
 *
 * @param release what it aims at, as {@link HandShapes#RELEASE} reads it
 * @param spread how far it wanders, as {@link HandShapes#SPREAD} reads it
 * @param shownPerUnit how many of these units make one of SI, or of the textbook model
 */
public record AimedHand(Body release, Body spread, double shownPerUnit) {

  /** A release from rest over the middle. */
  public static Body middle() {
    Map<String, Object> place = new LinkedHashMap<>();
    for (String name : List.of("x", "y", "vx", "vy")) {
      place.put(name, 0.0);
    }
    return Body.of(place);
  }

  /** The hand in SI, or the textbook model's own units. */
  public HandSpread inSi() {
    double unit = 1 / shownPerUnit;
    return new HandSpread(
        new Release(
            release.number("x") * unit,
            release.number("y") * unit,
            release.number("vx") * unit,
            release.number("vy") * unit),
        spread(unit),
        spread.number("speedDeviation") * unit);
  }

  private Spread spread(double unit) {
    return switch (spread.text("kind")) {
      case "disc" -> new DiscSpread(spread.number("radius") * unit);
      case "ring" ->
          new RingSpread(spread.number("innerRadius") * unit, spread.number("outerRadius") * unit);
      case "polygon" ->
          new PolygonSpread(
              spread.objects("corners").stream()
                  .map(c -> new PolygonSpread.Corner(c.number("x") * unit, c.number("y") * unit))
                  .toList());
      default -> new NormalSpread(spread.number("deviation") * unit);
    };
  }

  /**
   * Tells what the shapes cannot see.
   *
   * @param aimed whether a release was sent
   * @param place where the layout stands in the request, and so whether the hand is in the address
   * @param faults receives what is wrong
   */
  public void review(boolean aimed, LayoutPlace place, FaultList faults) {
    boolean address = place == LayoutPlace.ADDRESS;
    String kind = spread.text("kind");
    if (!aimed && !kind.equals("polygon")) {
      faults.add("/release", "is missing; only a polygon may stand on the plate by itself");
    }
    if (kind.equals("ring") && spread.number("innerRadius") > spread.number("outerRadius")) {
      faults.add(
          address ? "?innerMm" : "/spread/innerRadius",
          "is "
              + Numbers.shortest(spread.number("innerRadius"))
              + "; must be at most the outer radius, "
              + Numbers.shortest(spread.number("outerRadius")));
    }
    Spread shape = spread(1);
    if (shape instanceof PolygonSpread polygon) {
      review(polygon, faults);
    } else if (shape.size() == 0 && spread.number("speedDeviation") == 0) {
      faults.add(
          address ? "?spreadMm" : "/spread",
          "does not wander at all; ask for the outcome of one release instead, or give a size or a"
              + " speedDeviation above 0");
    }
  }

  private static void review(PolygonSpread polygon, FaultList faults) {
    if (polygon.crossed()) {
      faults.add("/spread/corners", "makes sides that cross or touch; give them along the border");
    } else if (polygon.filled() < PolygonSpread.LEAST_FILLED) {
      faults.add(
          "/spread/corners",
          "makes a zone that is too thin: it must fill a thousandth of the rectangle about it");
    }
  }

  /** The hand in words, as the beginning of a sentence. */
  public String words() {
    String unit = shownPerUnit == 1 ? "" : " mm";
    String at =
        "("
            + Numbers.plain(release.number("x"))
            + ", "
            + Numbers.plain(release.number("y"))
            + ")"
            + unit;
    String where =
        switch (spread.text("kind")) {
          case "disc" ->
              "anywhere within " + Numbers.plain(spread.number("radius")) + unit + " of " + at;
          case "ring" ->
              "between "
                  + Numbers.plain(spread.number("innerRadius"))
                  + " and "
                  + Numbers.plain(spread.number("outerRadius"))
                  + unit
                  + " from "
                  + at;
          case "polygon" ->
              "anywhere in a zone of " + spread.objects("corners").size() + " corners about " + at;
          default ->
              "at " + at + ", give or take " + Numbers.plain(spread.number("deviation")) + unit;
        };
    double push = spread.number("speedDeviation");
    String speed = shownPerUnit == 1 ? "" : " mm/s";
    return "A hand that lets go "
        + where
        + (push > 0 ? ", and pushes by " + Numbers.plain(push) + speed + " more or less," : "");
  }
}
