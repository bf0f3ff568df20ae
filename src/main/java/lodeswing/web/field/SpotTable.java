package lodeswing.web.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;

/** Weak spots as members of a document, numbered as a picture numbers them. */
final class SpotTable {

  private SpotTable() {}

  static List<Body> bodies(FieldWords words, List<ShownSpot> spots) {
    List<Body> bodies = new ArrayList<>();
    for (ShownSpot shown : spots) {
      WeakSpot spot = shown.spot();
      Map<String, Object> about = new LinkedHashMap<>();
      about.put("number", (double) (bodies.size() + 1));
      about.put("of", shown.inPlane() ? "plane" : "whole");
      about.put("kind", spot.kind().word());
      about.put("index", (double) spot.kind().index());
      about.put("x", FieldUnits.length(spot.x()));
      about.put("y", FieldUnits.length(spot.y()));
      about.put("z", FieldUnits.length(spot.z()));
      about.put("strengthMillitesla", FieldUnits.strength(spot.strength()));
      about.put("verticalMillitesla", FieldUnits.strength(spot.vertical()));
      spot.zone().ifPresent(zone -> about.put("zone", zone(zone)));
      Neighbours neighbours = words.neighbours();
      Optional<Integer> over = neighbours.over(spot.x(), spot.y());
      over.ifPresent(i -> about.put("over", neighbours.name(i)));
      if (over.isEmpty()) {
        about.put(
            "between",
            neighbours.about(spot.x(), spot.y()).stream().map(neighbours::name).toList());
      }
      about.put("sentence", words.spot(spot, shown.inPlane()));
      bodies.add(Body.of(about));
    }
    return bodies;
  }

  private static Body zone(WeakSpot.Zone zone) {
    Map<String, Object> about = new LinkedHashMap<>();
    about.put("levelMillitesla", FieldUnits.strength(zone.level()));
    about.put("areaMm2", Numbers.rounded(1e6 * zone.area()));
    about.put("acrossMm", FieldUnits.length(zone.across()));
    about.put("passMillitesla", FieldUnits.strength(zone.pass()));
    about.put("passX", FieldUnits.length(zone.passX()));
    about.put("passY", FieldUnits.length(zone.passY()));
    about.put("outwards", zone.outwards());
    return Body.of(about);
  }
}
